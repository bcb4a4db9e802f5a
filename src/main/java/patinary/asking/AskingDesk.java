package patinary.asking;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.Errors;
import patinary.money.Amount;
import patinary.pieces.TrueCosts;
import patinary.selling.UsualTerms;
import patinary.shop.Aims;
import patinary.shop.CurrentAims;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/** Gathers what a price to ask is worked out from. Reads only; nothing is stored. */
@Service
@Transactional(readOnly = true)
class AskingDesk {

    private static final int LATEST = 10;

    private final AskedPieces pieces;
    private final TrueCosts costs;
    private final ChannelRules channels;
    private final PastOffers past;
    private final CurrentAims aims;
    private final CurrentShop shop;

    AskingDesk(
            AskedPieces pieces,
            TrueCosts costs,
            ChannelRules channels,
            PastOffers past,
            CurrentAims aims,
            CurrentShop shop) {
        this.pieces = pieces;
        this.costs = costs;
        this.channels = channels;
        this.past = past;
        this.aims = aims;
        this.shop = shop;
    }

    /** Nothing where no piece is named, or something cannot be read. */
    public Optional<AskingView> view(AskingForm form, Errors errors) {
        Answers answers = new Answers(errors, shop.currency());
        List<AskedPiece> asked = pieces.read(answers, form.codes);
        Amount shipping = answers.optionalAmount("shipping", form.shipping).orElse(null);
        Amount outlay = answers.optionalAmount("outlay", form.outlay).orElse(null);
        if (asked.isEmpty() || errors.hasErrors()) {
            return Optional.empty();
        }
        List<UUID> ids = asked.stream().map(AskedPiece::id).toList();
        List<TrueCosts.Cost> cost = costs.of(ids);
        Aims now = aims.get();
        Needs needs = Needs.of(cost, now);
        List<PastOffer> all = past.of(ids);
        List<PastPrices> groups = groups(asked, all);
        return Optional.of(new AskingView(
                asked,
                needs,
                cost.stream().anyMatch(TrueCosts.Cost::uncosted),
                cost.stream().anyMatch(one -> one.minutes().signum() > 0),
                now.priceEndings(),
                channels.all().stream()
                        .map(channel -> prices(channel, shipping, outlay, needs, now))
                        .toList(),
                groups,
                latest(asked, all)));
    }

    private ChannelPrices prices(
            ChannelRules.Known channel, @Nullable Amount shipping, @Nullable Amount outlay, Needs needs, Aims now) {
        UsualTerms usual = channel.usual();
        UsualTerms terms = new UsualTerms(
                shipping == null ? usual.shipping() : shipping,
                outlay == null ? usual.outlay() : outlay,
                usual.tax(),
                usual.shippingTaxed());
        return ChannelPrices.of(
                channel.id(), channel.name(), channel.on(shop.today()), terms, needs, now.priceEndings());
    }

    private static List<PastPrices> groups(List<AskedPiece> asked, List<PastOffer> all) {
        UUID kind = common(asked, AskedPiece::kindId);
        UUID style = common(asked, AskedPiece::styleId);
        List<PastPrices> groups = new ArrayList<>();
        if (kind != null && style != null) {
            groups.add(PastPrices.of(PastPrices.Likeness.BOTH, all, of(kind, style)));
        }
        if (kind != null) {
            groups.add(PastPrices.of(PastPrices.Likeness.KIND, all, of(kind, null)));
        }
        if (style != null) {
            groups.add(PastPrices.of(PastPrices.Likeness.STYLE, all, of(null, style)));
        }
        return groups;
    }

    /** The closest likeness that has any. */
    private static List<PastOffer> latest(List<AskedPiece> asked, List<PastOffer> all) {
        UUID kind = common(asked, AskedPiece::kindId);
        UUID style = common(asked, AskedPiece::styleId);
        List<Predicate<PastOffer>> closest = new ArrayList<>();
        if (kind != null && style != null) {
            closest.add(of(kind, style));
        }
        if (kind != null) {
            closest.add(of(kind, null));
        }
        if (style != null) {
            closest.add(of(null, style));
        }
        return closest.stream()
                .map(like -> all.stream().filter(like).limit(LATEST).toList())
                .filter(found -> !found.isEmpty())
                .findFirst()
                .orElse(List.of());
    }

    private static Predicate<PastOffer> of(@Nullable UUID kind, @Nullable UUID style) {
        return offer ->
                (kind == null || kind.equals(offer.kindId())) && (style == null || style.equals(offer.styleId()));
    }

    /** What all the pieces share; null where one differs or says nothing. */
    private static @Nullable UUID common(List<AskedPiece> asked, Function<AskedPiece, @Nullable UUID> part) {
        UUID first = part.apply(asked.get(0));
        return asked.stream().allMatch(piece -> Objects.equals(part.apply(piece), first)) ? first : null;
    }
}
