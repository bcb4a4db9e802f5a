package patinary.selling;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/** Reads the form of an offer, and fills it. */
@Component
class OfferAnswers {

    private static final int TITLE = 200;
    private static final int NOTE = 2000;

    private final PieceFinder pieces;
    private final OwnerShares owners;
    private final ChannelBook channels;
    private final SellingDays days;
    private final CurrentShop shop;

    OfferAnswers(PieceFinder pieces, OwnerShares owners, ChannelBook channels, SellingDays days, CurrentShop shop) {
        this.pieces = pieces;
        this.owners = owners;
        this.channels = channels;
        this.days = days;
        this.shop = shop;
    }

    /** A new form with what is given already, for instance by the page of prices to ask. */
    OfferForm blank(OfferForm given) {
        OfferForm form = new OfferForm();
        form.id = UUID.randomUUID().toString();
        form.date = given.date.isEmpty() ? days.today() : given.date;
        form.codes = given.codes;
        form.weights = given.weights;
        form.title = given.title;
        form.price = given.price;
        form.note = given.note;
        form.together = given.together;
        form.channels.addAll(given.channels);
        return form;
    }

    /** A new form for more of what an offer has. */
    OfferForm like(Offer offer) {
        OfferForm form = form(offer);
        form.id = UUID.randomUUID().toString();
        form.version = 0;
        form.date = days.today();
        form.codes = "";
        form.price = shop.currency().plain(offer.content().lastPrice());
        form.together = "ALIKE";
        form.like = offer.id().toString();
        return form;
    }

    OfferForm form(Offer offer) {
        Offer.Content content = offer.content();
        OfferForm form = new OfferForm();
        form.id = offer.id().toString();
        form.version = offer.version();
        form.date = content.date().toString();
        form.title = content.title();
        form.note = content.note();
        Map<UUID, PieceRef> refs = pieces.byId(
                content.pieces().stream().map(Offer.OfferedPiece::pieceId).toList());
        List<Offer.OfferedPiece> sorted = content.pieces().stream()
                .sorted(java.util.Comparator.comparing(
                        (Offer.OfferedPiece piece) -> refs.get(piece.pieceId()).code()))
                .toList();
        form.codes =
                sorted.stream().map(piece -> refs.get(piece.pieceId()).code()).collect(Collectors.joining(" "));
        form.weights =
                Weights.write(sorted.stream().map(Offer.OfferedPiece::weight).toList());
        form.price = shop.currency().plain(content.prices().get(0).price());
        content.channels().forEach(channel -> form.channels.add(channel.toString()));
        return form;
    }

    /** @param before what the offer said until now, or null where it is new */
    Offer.Content read(OfferForm form, Errors errors, Offer.@Nullable Content before) {
        Answers answers = new Answers(errors, shop.currency());
        LocalDate date = days.read(answers, "date", form.date);
        List<PieceRef> refs = pieces.read(answers, "codes", form.codes);
        if (before == null) {
            refs.stream()
                    .filter(piece -> !piece.canBeSold())
                    .forEach(piece -> answers.wrong("codes", "selling.error.piece-left", piece.code()));
        }
        Set<UUID> others = owners.commissions(refs.stream().map(PieceRef::id).toList());
        refs.stream()
                .filter(piece -> others.contains(piece.id()))
                .forEach(piece -> answers.wrong("codes", "selling.error.commission", piece.code()));
        List<BigDecimal> weights = Weights.read(answers, "weights", form.weights, refs.size());
        String title = answers.note("title", form.title, TITLE);
        if (title.isEmpty()) {
            title = refs.stream().map(PieceRef::title).collect(Collectors.joining(", "));
            title = title.substring(0, Math.min(title.length(), TITLE));
        }
        Amount price = answers.amount("price", form.price);
        return new Offer.Content(
                date,
                answers.note("note", form.note, NOTE),
                title,
                before == null ? null : before.alikeId(),
                before == null ? null : before.endedOn(),
                offered(refs, weights),
                chosen(form, answers),
                prices(answers, date, price, before),
                pauses(answers, date, before));
    }

    private static List<Offer.OfferedPiece> offered(List<PieceRef> refs, List<BigDecimal> weights) {
        List<Offer.OfferedPiece> offered = new ArrayList<>();
        for (int i = 0; i < refs.size(); i++) {
            offered.add(new Offer.OfferedPiece(refs.get(i).id(), weights.get(i)));
        }
        return offered;
    }

    private List<UUID> chosen(OfferForm form, Answers answers) {
        List<UUID> chosen = channels.all().stream()
                .map(ChannelFacts::id)
                .filter(id -> form.channels.contains(id.toString()))
                .toList();
        if (chosen.isEmpty()) {
            answers.wrong("channels", "selling.error.no-channel");
        }
        return chosen;
    }

    /** The first price moves with the first day; what came later stays. */
    private static List<Offer.Price> prices(
            Answers answers, LocalDate date, Amount price, Offer.@Nullable Content before) {
        List<Offer.Price> prices = new ArrayList<>(List.of(new Offer.Price(date, price)));
        if (before != null) {
            List<Offer.Price> later = before.prices().subList(1, before.prices().size());
            if (later.stream().anyMatch(old -> !old.validFrom().isAfter(date))) {
                answers.wrong("date", "selling.error.after-price-change");
            }
            prices.addAll(later);
        }
        return prices;
    }

    private static List<Offer.Pause> pauses(Answers answers, LocalDate date, Offer.@Nullable Content before) {
        if (before == null) {
            return List.of();
        }
        LocalDate ended = before.endedOn();
        if (before.pauses().stream().anyMatch(pause -> pause.pausedFrom().isBefore(date))
                || ended != null && ended.isBefore(date)) {
            answers.wrong("date", "selling.error.after-pause");
        }
        return before.pauses();
    }
}
