package patinary.invented;

import static patinary.invented.Facts.usd;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import patinary.exchange.NewArchive;
import patinary.exchange.NewArchive.Line;

/** What the invented shop bought, and the ways to it. */
final class BuyingFiles {

    private static final BigDecimal RATE = new BigDecimal("0.600");

    private final Facts facts;
    private final NewArchive archive;

    BuyingFiles(Facts facts, NewArchive archive) {
        this.facts = facts;
        this.archive = archive;
    }

    void write() throws IOException {
        trips();
        receipts();
        lines();
        archive.table(
                "receipt_piece",
                rows -> facts.lives()
                        .each(life -> rows.add(new Line()
                                .with("receipt_id", facts.id("receipt", life.receipt()))
                                .with("line", life.number() % 2 + 1)
                                .with("piece_id", facts.id("piece", life.number()))
                                .with("weight", BigDecimal.ONE))));
        archive.table("receipt_payment", rows -> {
            eachReceipt((number, day, source, total) -> rows.add(new Line()
                    .with("receipt_id", facts.id("receipt", number))
                    .with("line", 1)
                    .with("way", "PLACE")
                    .with("place_id", facts.id(Facts.BANK, 0))
                    .with("amount", usd(total))));
            eachSupplyReceipt(receipt -> rows.add(new Line()
                    .with("receipt_id", facts.id("supply-receipt", receipt.number()))
                    .with("line", 1)
                    .with("way", "PLACE")
                    .with("place_id", facts.id(Facts.BANK, 0))
                    .with("amount", usd(receipt.total()))));
        });
    }

    private void trips() throws IOException {
        archive.table("trip", rows -> {
            for (int receipt = 0; receipt < facts.lives().receipts(); receipt += 2) {
                Chance chance = new Chance(facts.seed(), "trip", receipt);
                rows.add(new Line()
                        .with("id", facts.id("trip", receipt))
                        .with("date", facts.lives().boughtOn(receipt))
                        .with("recorded_at", Facts.evening(facts.lives().boughtOn(receipt)))
                        .with("purpose", "Buying")
                        .with("start_place", "Workroom")
                        .with("destination", Assortment.SOURCES.get(source(receipt)))
                        .with("miles", BigDecimal.valueOf(chance.between(20, 480), 1))
                        .with("rate", RATE));
            }
        });
    }

    private void receipts() throws IOException {
        archive.table("receipt", rows -> {
            eachReceipt((number, day, source, total) -> rows.add(new Line()
                    .with("id", facts.id("receipt", number))
                    .with("date", day)
                    .with("recorded_at", Facts.evening(day))
                    .with("source_id", facts.id("source", source))
                    .with("trip_id", number % 2 == 0 ? facts.id("trip", number) : null)
                    .with("till_total", usd(total))));
            eachSupplyReceipt(receipt -> rows.add(new Line()
                    .with("id", facts.id("supply-receipt", receipt.number()))
                    .with("date", receipt.day())
                    .with("recorded_at", Facts.evening(receipt.day()))
                    .with("till_total", usd(receipt.total()))));
        });
    }

    private void lines() throws IOException {
        archive.table("receipt_line", rows -> {
            facts.lives()
                    .each(life -> rows.add(new Line()
                            .with("receipt_id", facts.id("receipt", life.receipt()))
                            .with("line", life.number() % 2 + 1)
                            .with("kind", "PIECES")
                            .with("title", Assortment.KINDS.get(life.kind()))
                            .with("quantity", BigDecimal.ONE)
                            .with("price", usd(life.paid()))
                            .with("about", false)));
            eachSupplyReceipt(receipt -> {
                for (int i = 0; i < receipt.lines().size(); i++) {
                    SupplyPlan.Line line = receipt.lines().get(i);
                    rows.add(new Line()
                            .with("receipt_id", facts.id("supply-receipt", receipt.number()))
                            .with("line", i + 1)
                            .with("kind", "SUPPLY")
                            .with("quantity", BigDecimal.valueOf(line.containers()))
                            .with("price", usd(Assortment.price(line.supply())))
                            .with("about", false)
                            .with("supply_id", facts.id("supply", line.supply()))
                            .with("content", BigDecimal.valueOf(Assortment.CONTAINER)));
                }
            });
        });
    }

    private interface Receipt {

        void on(int number, LocalDate day, int source, long total);
    }

    private void eachReceipt(Receipt receipts) {
        for (int number = 0; number < facts.lives().receipts(); number++) {
            long total = IntStream.of(2 * number, 2 * number + 1)
                    .filter(piece -> piece < facts.lives().pieces())
                    .mapToLong(piece -> facts.lives().of(piece).paid())
                    .sum();
            receipts.on(number, facts.lives().boughtOn(number), source(number), total);
        }
    }

    private void eachSupplyReceipt(Consumer<SupplyPlan.Receipt> receipts) {
        for (int quarter = 0; quarter < Span.QUARTERS; quarter++) {
            facts.plan().receipts(quarter).forEach(receipts);
        }
    }

    private int source(int receipt) {
        return new Chance(facts.seed(), "source", receipt).favoured(Assortment.SOURCES.size());
    }
}
