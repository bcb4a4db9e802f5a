package patinary.buying;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.Errors;
import patinary.buying.ReturnForm.SupplyRow;
import patinary.buying.SupplierReturn.ReturnedSupply;
import patinary.ledger.StockPlace;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.shop.MoneyPlaces;
import patinary.supplies.Supplies;
import patinary.supplies.Supply;
import patinary.supplies.SupplyMeasures;
import patinary.web.Answers;

/** Reads the form of a return to a supplier. */
@Component
@Transactional(readOnly = true)
class ReturnReader {

    private final CurrentShop shop;
    private final Supplies supplies;
    private final MoneyPlaces places;
    private final ReturnDesk desk;
    private final BillDesk bills;

    ReturnReader(CurrentShop shop, Supplies supplies, MoneyPlaces places, ReturnDesk desk, BillDesk bills) {
        this.shop = shop;
        this.supplies = supplies;
        this.places = places;
        this.desk = desk;
        this.bills = bills;
    }

    /** What the form says; to be used only where no error was noted. */
    SupplierReturn.Content read(ReturnForm form, Errors errors) {
        Answers answers = new Answers(errors, shop.currency());
        UUID own = answers.id("id", form.id, "buying.error.id");
        LocalDate date = answers.date("date", form.date);
        BuyingDates.check(answers, "date", date, shop);
        UUID source =
                answers.optionalId("source", form.source, "buying.error.source").orElse(null);
        Amount amount = answers.amount("amount", form.amount);
        PaidWith way = way(answers, form, source != null);
        UUID receipt = way.way() == Way.OWED ? lessOwed(answers, form.receipt, amount, own) : null;
        List<UUID> pieces = form.pieces.stream()
                .flatMap(piece -> answers.optionalId("pieces", piece, "buying.error.id").stream())
                .distinct()
                .toList();
        List<ReturnedSupply> returned = supplies(answers, form);
        if (pieces.isEmpty() && returned.isEmpty()) {
            answers.wrong("", "buying.error.nothing-back");
        }
        String note = answers.note("note", form.note, 2000);
        return new SupplierReturn.Content(
                date, note, source, way.way(), way.place(), receipt, amount, pieces, returned);
    }

    /** The receipt on which less is owed. A return sent twice is held against what was owed before it only once. */
    private @Nullable UUID lessOwed(Answers answers, String typed, Amount amount, UUID own) {
        Optional<UUID> receipt = answers.optionalId("way", typed, "buying.error.not-owed");
        if (desk.find(own).isPresent()) {
            return receipt.orElse(null);
        }
        Amount owed = receipt.map(bills::owed).orElse(Amount.ZERO);
        if (!owed.isPositive()) {
            answers.wrong("way", "buying.error.not-owed");
        } else if (amount.compareTo(owed) > 0) {
            answers.wrong(
                    "amount", "buying.error.more-than-owed", shop.currency().plain(owed));
        }
        return receipt.orElse(null);
    }

    private PaidWith way(Answers answers, ReturnForm form, boolean hasSource) {
        Optional<PaidWith> way =
                PaidWith.read(form.way, places.findAllByOrderByName()).filter(with -> with.way() != Way.OWNER);
        if (way.isEmpty()) {
            answers.wrong("way", "buying.error.way");
        } else if (way.get().way() == Way.STORE_CREDIT && !hasSource) {
            answers.wrong("way", "buying.error.credit-source");
        }
        return way.orElse(new PaidWith(Way.STORE_CREDIT, null));
    }

    private List<ReturnedSupply> supplies(Answers answers, ReturnForm form) {
        List<ReturnedSupply> returned = new ArrayList<>();
        for (int i = 0; i < form.supplies.size(); i++) {
            if (!form.supplies.get(i).isEmpty()) {
                supply(answers, "supplies[" + i + "].", form.supplies.get(i), returned);
            }
        }
        return List.copyOf(returned);
    }

    private void supply(Answers answers, String at, SupplyRow row, List<ReturnedSupply> returned) {
        Optional<Supply> supply = answers.optionalId(at + "supply", row.supply, "buying.error.supply")
                .flatMap(supplies::findById);
        Optional<StockPlace> place = answers.word(at + "place", row.place, StockPlace.class, "buying.error.place");
        if (supply.isEmpty() || place.isEmpty()) {
            answers.wrong(at + "supply", "buying.error.supply");
            return;
        }
        Supply.Facts facts = supply.get().facts();
        Optional<BigDecimal> quantity =
                answers.quantity(at + "quantity", row.quantity, facts.dimension(), SupplyMeasures.of(facts));
        if (quantity.isPresent() && quantity.get().signum() <= 0) {
            answers.wrong(at + "quantity", "buying.error.content");
        }
        quantity.ifPresent(much -> returned.add(
                new ReturnedSupply(returned.size() + 1, supply.get().id(), place.get(), much)));
    }
}
