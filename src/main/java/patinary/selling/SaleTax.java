package patinary.selling;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import patinary.money.Amount;
import patinary.salestax.TaxPlace;
import patinary.salestax.TaxPlaces;
import patinary.salestax.TaxRule;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.Ids;

/** Where a sale is taxed, and what its place proposes. */
@Component
class SaleTax {

    /** The answer that a sale is bound to no place. */
    static final String NONE = "NONE";

    private final TaxPlaces places;
    private final ChannelBook channels;

    SaleTax(TaxPlaces places, ChannelBook channels) {
        this.places = places;
        this.channels = channels;
    }

    /** Her own places as the form offers them; none where she keeps none. */
    static List<Choice> choices(List<Choice> own) {
        return own.isEmpty()
                ? List.of()
                : Stream.concat(Stream.of(Choice.said(NONE, "selling.sale.tax-place.none")), own.stream())
                        .toList();
    }

    /** The name of a sale's place, or null. */
    @Nullable
    String name(@Nullable UUID place) {
        return Optional.ofNullable(place)
                .flatMap(places::find)
                .map(TaxPlace::name)
                .orElse(null);
    }

    /** Whether the channel pays the tax over, as typed or as it usually does. */
    static boolean isPassed(SaleForm form, Optional<ChannelFacts> channel) {
        return form.taxBy.isBlank()
                ? channel.filter(ChannelFacts::passesTax).isPresent()
                : form.taxBy.equals("CHANNEL");
    }

    /** The place as typed, or the channel's usual one; an unknown one is an error beside the field. */
    Optional<UUID> place(SaleForm form, Optional<ChannelFacts> channel, Answers answers) {
        Optional<UUID> place = place(form, channel);
        if (place.isPresent() && places.find(place.get()).isEmpty()) {
            answers.wrong("taxPlace", "salestax.error.unknown");
        }
        return place;
    }

    /** What the place takes of a sale on a day; nothing where it has no rate yet. */
    Amount proposed(Optional<UUID> place, LocalDate day, Charged untaxed) {
        return place.flatMap(places::find)
                .flatMap(known -> known.ruleOn(day))
                .map(rule -> rule.tax(untaxed.price(), untaxed.shipping()))
                .orElse(Amount.ZERO);
    }

    /** Whether a place proposes the tax of what is typed, so that it may be worked out anew. */
    boolean proposes(SaleForm form) {
        Optional<ChannelFacts> channel = Ids.read(form.channel).flatMap(channels::find);
        return !isPassed(form, channel)
                && place(form, channel)
                        .flatMap(places::find)
                        .flatMap(known -> day(form).flatMap(known::ruleOn))
                        .map(TaxRule::percent)
                        .isPresent();
    }

    private Optional<UUID> place(SaleForm form, Optional<ChannelFacts> channel) {
        if (form.taxPlace.equals(NONE)) {
            return Optional.empty();
        }
        return form.taxPlace.isBlank() ? channel.map(ChannelFacts::id).flatMap(places::usual) : Ids.read(form.taxPlace);
    }

    private static Optional<LocalDate> day(SaleForm form) {
        try {
            return Optional.of(LocalDate.parse(form.date));
        } catch (DateTimeParseException unreadable) {
            return Optional.empty();
        }
    }
}
