package patinary.arrangements;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.validation.Errors;
import patinary.ledger.Books;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.pieces.NewPieces;
import patinary.selling.BuyerPayment;
import patinary.shop.CurrentShop;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.Ids;
import patinary.web.NotFound;

/** Takes in a piece of somebody else, with what is agreed about it and what was paid ahead. */
@Service
class OwnedDesk {

    private final Owned owned;
    private final NewPieces pieces;
    private final Books books;
    private final MoneyPlaces places;
    private final CurrentShop shop;
    private final Refusal refusal;
    private final TransactionTemplate transaction;

    OwnedDesk(
            Owned owned,
            NewPieces pieces,
            Books books,
            MoneyPlaces places,
            CurrentShop shop,
            Refusal refusal,
            TransactionTemplate transaction) {
        this.owned = owned;
        this.pieces = pieces;
        this.books = books;
        this.places = places;
        this.shop = shop;
        this.refusal = refusal;
        this.transaction = transaction;
    }

    OwnedForm blank() {
        OwnedForm form = new OwnedForm();
        form.id = UUID.randomUUID().toString();
        form.since = shop.today().toString();
        return form;
    }

    OwnedForm form(UUID piece) {
        Owned.Terms terms = terms(piece);
        OwnedForm form = blank();
        form.id = piece.toString();
        form.version = owned.version(piece);
        form.title = owned.title(piece);
        form.owner = terms.owner();
        form.since = terms.since().toString();
        form.price = plain(terms.priceMinor());
        LocalDate due = terms.dueOn();
        form.due = due == null ? "" : due.toString();
        form.percent = terms.sharePercent() == null
                ? ""
                : terms.sharePercent().stripTrailingZeros().toPlainString();
        form.share = plain(terms.shareMinor());
        form.note = terms.note();
        return form;
    }

    Owned.Terms terms(UUID piece) {
        return owned.find(piece).orElseThrow(() -> new NotFound("Terms of piece " + piece));
    }

    List<Choice> places() {
        return places.findAllByOrderByName().stream()
                .map(place -> Choice.named(place.id().toString(), place.name()))
                .toList();
    }

    /** Takes the piece in, once however often the form is sent; or tells on the form why not. */
    boolean take(OwnedForm form, Arrangement arrangement, Errors errors) {
        Answers answers = new Answers(errors, shop.currency());
        UUID piece = Ids.read(form.id).orElseGet(UUID::randomUUID);
        String title = answers.text("title", form.title, 200, "arrangements.error.title");
        Owned.Terms terms = read(form, arrangement, answers, piece);
        Amount deposit = answers.optionalAmount("deposit", form.deposit).orElse(Amount.ZERO);
        @Nullable UUID place = deposit.isPositive() ? place(form, answers) : null;
        if (answers.anyWrong()) {
            return false;
        }
        try {
            transaction.executeWithoutResult(status -> {
                books.hold();
                if (!pieces.isThere(piece)) {
                    pieces.create(piece, title, null, null);
                    owned.add(terms);
                    if (place != null) {
                        books.record(new BuyerPayment(
                                UUID.randomUUID(), terms.since(), title, null, terms.owner(), place, deposit));
                    }
                }
            });
        } catch (Refused refused) {
            refusal.tell(errors, refused);
        }
        return !errors.hasErrors();
    }

    /** Changes what is agreed; what was sold already stays as it was sold. */
    boolean change(UUID piece, OwnedForm form, Errors errors) {
        Answers answers = new Answers(errors, shop.currency());
        Owned.Terms before = terms(piece);
        Owned.Terms terms = read(form, Arrangement.valueOf(before.arrangement()), answers, piece);
        if (!answers.anyWrong()) {
            owned.change(terms, form.version);
        }
        return !errors.hasErrors();
    }

    /** Takes out what was typed by mistake; nothing may have happened to the piece. */
    boolean remove(UUID piece) {
        terms(piece);
        return Boolean.TRUE.equals(transaction.execute(status -> {
            owned.remove(piece);
            boolean gone = pieces.discard(piece);
            if (!gone) {
                status.setRollbackOnly();
            }
            return gone;
        }));
    }

    private Owned.Terms read(OwnedForm form, Arrangement arrangement, Answers answers, UUID piece) {
        String owner = answers.text("owner", form.owner, 200, "arrangements.error.owner");
        LocalDate since = answers.date("since", form.since);
        Optional<LocalDate> due = answers.optionalDate("due", form.due);
        boolean commission = arrangement == Arrangement.COMMISSION;
        Optional<Amount> price = answers.optionalAmount("price", form.price);
        Optional<Percent> percent = commission ? Optional.empty() : answers.percent("percent", form.percent);
        Optional<Amount> share = commission ? Optional.empty() : answers.optionalAmount("share", form.share);
        if (!commission && !answers.anyWrong() && percent.isPresent() == share.isPresent()) {
            answers.wrong("percent", "arrangements.error.share");
        }
        if (percent.filter(Owned::isMoreThanAll).isPresent()) {
            answers.wrong("percent", "arrangements.error.percent");
        }
        return new Owned.Terms(
                piece,
                arrangement.name(),
                owner,
                since,
                price.map(Amount::minor).orElse(null),
                due.orElse(null),
                percent.map(Percent::value).orElse(null),
                share.map(Amount::minor).orElse(null),
                answers.note("note", form.note, 2000));
    }

    private UUID place(OwnedForm form, Answers answers) {
        UUID id = answers.id("place", form.place, "arrangements.error.place");
        if (!form.place.isBlank() && places.findById(id).map(MoneyPlace::id).isEmpty()) {
            answers.wrong("place", "arrangements.error.place");
        }
        return id;
    }

    /** The agreed prices as they would be typed; empty where none is agreed. */
    Map<UUID, String> prices(List<Owned.Row> rows) {
        return rows.stream().collect(Collectors.toMap(Owned.Row::pieceId, row -> plain(row.priceMinor())));
    }

    private String plain(@Nullable Long minor) {
        return minor == null ? "" : shop.currency().plain(Amount.of(minor));
    }
}
