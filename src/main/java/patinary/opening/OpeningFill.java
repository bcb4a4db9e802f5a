package patinary.opening;

import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import patinary.ledger.Account;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.supplies.Supply;

/** Fills the opening page with what is recorded, and with a row for every money place. */
@Component
class OpeningFill {

    private final OpeningChoices choices;
    private final CurrentShop shop;

    OpeningFill(OpeningChoices choices, CurrentShop shop) {
        this.choices = choices;
        this.shop = shop;
    }

    OpeningForm empty() {
        OpeningForm form = new OpeningForm();
        form.pieces.add(new OpeningForm.PieceRow());
        form.supplies.add(new OpeningForm.SupplyRow());
        completeMoney(form);
        return form;
    }

    OpeningForm of(OpeningDesk.Stored stored) {
        Opening.Content content = stored.content();
        OpeningForm form = new OpeningForm();
        form.version = stored.version();
        form.note = content.note();
        form.odometer = content.odometer() == null
                ? ""
                : content.odometer().stripTrailingZeros().toPlainString();
        form.lastClosing = amount(content.lastClosing());
        content.pieces().forEach(piece -> form.pieces.add(piece(piece)));
        Map<UUID, Supply.Facts> facts = choices.supplyFacts();
        content.supplies().forEach(supply -> form.supplies.add(supply(supply, facts)));
        content.balances().forEach(balance -> balance(balance, form));
        completeMoney(form);
        return form;
    }

    /** Places that came into being later are shown too. */
    private void completeMoney(OpeningForm form) {
        for (String place : choices.moneyPlaces().keySet()) {
            if (form.money.stream().noneMatch(row -> row.placeId.equals(place))) {
                OpeningForm.MoneyRow row = new OpeningForm.MoneyRow();
                row.placeId = place;
                form.money.add(row);
            }
        }
    }

    private OpeningForm.PieceRow piece(Opening.OpeningPiece piece) {
        OpeningForm.PieceRow row = new OpeningForm.PieceRow();
        row.pieceId = piece.pieceId().toString();
        row.cost = amount(piece.cost());
        row.unknown = !piece.known();
        return row;
    }

    private OpeningForm.SupplyRow supply(Opening.OpeningSupply supply, Map<UUID, Supply.Facts> facts) {
        OpeningForm.SupplyRow row = new OpeningForm.SupplyRow();
        row.supplyId = supply.supplyId().toString();
        row.place = supply.place().name();
        row.quantity =
                QuantityTyped.of(supply.quantity(), facts.get(supply.supplyId()).dimension());
        row.cost = amount(supply.cost());
        row.about = supply.about();
        return row;
    }

    private void balance(Opening.OpeningBalance balance, OpeningForm form) {
        if (balance.account() == Account.MONEY) {
            OpeningForm.MoneyRow row = new OpeningForm.MoneyRow();
            row.placeId = String.valueOf(balance.placeId());
            row.amount = amount(balance.amount());
            form.money.add(row);
            return;
        }
        OpeningForm.OwedRow row = new OpeningForm.OwedRow();
        row.account = balance.account().name();
        row.partyId = balance.partyId() == null ? "" : balance.partyId().toString();
        row.title = balance.title();
        row.amount = amount(balance.amount());
        form.owed.add(row);
    }

    private String amount(@Nullable Amount amount) {
        return amount == null ? "" : shop.currency().plain(amount);
    }
}
