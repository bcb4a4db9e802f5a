package patinary.opening;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import patinary.ledger.StockPlace;
import patinary.money.Amount;
import patinary.supplies.Supply;
import patinary.supplies.SupplyMeasures;
import patinary.web.Answers;

/** Judges what was left of the supplies on the opening page. */
@Component
class SupplyRowReading {

    private final OpeningChoices choices;

    SupplyRowReading(OpeningChoices choices) {
        this.choices = choices;
    }

    List<Opening.OpeningSupply> read(
            List<OpeningForm.SupplyRow> rows, Answers answers, List<Opening.OpeningSupply> stored) {
        Map<UUID, Supply.Facts> facts = choices.supplyFacts();
        List<Opening.OpeningSupply> supplies = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            OpeningForm.SupplyRow row = rows.get(i);
            String at = "supplies[" + i + "].";
            UUID id = answers.id(at + "supplyId", row.supplyId, "opening.error.supply");
            StockPlace place = answers.word(at + "place", row.place, StockPlace.class, "opening.error.place")
                    .orElse(StockPlace.BENCH);
            Amount cost = answers.amount(at + "cost", row.cost);
            Supply.Facts supply = facts.get(id);
            if (supply == null) {
                if (!row.supplyId.isBlank()) {
                    answers.wrong(at + "supplyId", "opening.error.supply");
                }
                continue;
            }
            BigDecimal quantity = quantity(answers, at + "quantity", row.quantity, id, supply, stored);
            supplies.add(new Opening.OpeningSupply(i + 1, id, place, quantity, cost, row.about));
        }
        return supplies;
    }

    /** An answer left as it was drawn keeps the stored quantity to its last decimal. */
    private static BigDecimal quantity(
            Answers answers,
            String field,
            String typed,
            UUID id,
            Supply.Facts supply,
            List<Opening.OpeningSupply> stored) {
        Optional<BigDecimal> unchanged = stored.stream()
                .filter(line -> line.supplyId().equals(id))
                .map(Opening.OpeningSupply::quantity)
                .filter(quantity ->
                        QuantityTyped.of(quantity, supply.dimension()).equals(typed))
                .findFirst();
        return unchanged.orElseGet(() -> {
            Optional<BigDecimal> read = answers.quantity(field, typed, supply.dimension(), SupplyMeasures.of(supply));
            if (read.filter(quantity -> quantity.signum() <= 0).isPresent()) {
                answers.wrong(field, "opening.error.quantity");
            }
            return read.orElse(BigDecimal.ONE);
        });
    }
}
