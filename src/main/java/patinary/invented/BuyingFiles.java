package patinary.invented;

import static patinary.invented.Facts.usd;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import patinary.exchange.NewArchive;

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
                        .each(life -> rows.add(
                                "receipt_id",
                                facts.id("receipt", life.receipt()),
                                "line",
                                life.number() % 2 + 1,
                                "piece_id",
                                facts.id("piece", life.number()),
                                "weight",
                                BigDecimal.ONE)));
        archive.table("receipt_payment", rows -> {
            eachReceipt((number, day, source, total) -> rows.add(
                    "receipt_id", facts.id("receipt", number),
                    "line", 1,
                    "way", "PLACE",
                    "place_id", facts.id(Facts.BANK, 0),
                    "amount", usd(total)));
            eachSupplyReceipt(receipt -> rows.add(
                    "receipt_id", facts.id("supply-receipt", receipt.number()),
                    "line", 1,
                    "way", "PLACE",
                    "place_id", facts.id(Facts.BANK, 0),
                    "amount", usd(receipt.total())));
        });
    }

    private void trips() throws IOException {
        archive.table("trip", rows -> {
            for (int receipt = 0; receipt < facts.lives().receipts(); receipt += 2) {
                Chance chance = new Chance(facts.seed(), "trip", receipt);
                Facts.document(
                        rows,
                        facts.id("trip", receipt),
                        facts.lives().boughtOn(receipt),
                        "purpose",
                        "Buying",
                        "start_place",
                        "Workroom",
                        "destination",
                        Assortment.SOURCES.get(source(receipt)),
                        "miles",
                        BigDecimal.valueOf(chance.between(20, 480), 1),
                        "rate",
                        RATE);
            }
        });
    }

    private void receipts() throws IOException {
        archive.table("receipt", rows -> {
            eachReceipt((number, day, source, total) -> Facts.document(
                    rows,
                    facts.id("receipt", number),
                    day,
                    "source_id",
                    facts.id("source", source),
                    "trip_id",
                    number % 2 == 0 ? facts.id("trip", number) : null,
                    "till_total",
                    usd(total)));
            eachSupplyReceipt(receipt -> Facts.document(
                    rows,
                    facts.id("supply-receipt", receipt.number()),
                    receipt.day(),
                    "till_total",
                    usd(receipt.total())));
        });
    }

    private void lines() throws IOException {
        archive.table("receipt_line", rows -> {
            facts.lives()
                    .each(life -> rows.add(
                            "receipt_id",
                            facts.id("receipt", life.receipt()),
                            "line",
                            life.number() % 2 + 1,
                            "kind",
                            "PIECES",
                            "title",
                            Assortment.KINDS.get(life.kind()),
                            "quantity",
                            BigDecimal.ONE,
                            "price",
                            usd(life.paid()),
                            "about",
                            false));
            eachSupplyReceipt(receipt -> {
                for (int i = 0; i < receipt.lines().size(); i++) {
                    SupplyPlan.Line line = receipt.lines().get(i);
                    rows.add(
                            "receipt_id", facts.id("supply-receipt", receipt.number()),
                            "line", i + 1,
                            "kind", "SUPPLY",
                            "quantity", BigDecimal.valueOf(line.containers()),
                            "price", usd(Assortment.price(line.supply())),
                            "about", false,
                            "supply_id", facts.id("supply", line.supply()),
                            "content", BigDecimal.valueOf(Assortment.CONTAINER));
                }
            });
        });
    }

    private interface Receipt {

        void on(int number, java.time.LocalDate day, int source, long total);
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
