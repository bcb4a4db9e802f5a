package patinary.invented;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.Patinary;
import patinary.bench.BenchContent;
import patinary.bench.BenchEntry;
import patinary.bench.BenchPiece;
import patinary.bench.SupplyUse;
import patinary.bench.UsePiece;
import patinary.buying.LineKind;
import patinary.buying.Receipt;
import patinary.buying.ReceiptContent;
import patinary.buying.ReceiptLine;
import patinary.ledger.Books;
import patinary.ledger.Document;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.spending.Expense;

/**
 * How long a change takes in a shop of any size that is already there, as {@code load} has made it: a document is recorded and
 * removed again, a few times, and each recording is timed. Prints a table for docs/benchmarks.md. {@code
 * .ci/measure-changes SETTING...} runs it; the settings say where the shop is, as they do for the program.
 */
final class MeasureChanges {

    private static final int RUNS = 15;
    private static final long MILLION = 1_000_000;

    private final Books books;
    private final TransactionTemplate transaction;
    private final UUID cash;
    private final LocalDate last;
    private final List<UUID> supplies;
    private final List<UUID> pieces;

    private MeasureChanges(ConfigurableApplicationContext program) {
        books = program.getBean(Books.class);
        transaction = program.getBean(TransactionTemplate.class);
        JdbcClient jdbc = program.getBean(JdbcClient.class);
        cash = jdbc.sql("select id from money_place where kind = 'CASH' order by name fetch first 1 row only")
                .query(UUID.class)
                .single();
        last = jdbc.sql("select max(doc_date) from document")
                .query(LocalDate.class)
                .single();
        supplies = jdbc.sql("select supply_id from bench_use group by supply_id order by count(*) desc, supply_id")
                .query(UUID.class)
                .list();
        pieces = jdbc.sql("""
                select bp.piece_id from bench_piece bp join document d on d.id = bp.bench_entry_id
                group by bp.piece_id order by max(d.doc_date) desc, bp.piece_id fetch first 5 rows only""").query(UUID.class).list();
    }

    public static void main(String[] settings) {
        try (ConfigurableApplicationContext program = new SpringApplicationBuilder(Patinary.class).run(settings)) {
            new MeasureChanges(program).run();
        }
        System.exit(0);
    }

    private void run() {
        System.out.println("| change | median | slowest |\n|---|---|---|");
        measure("an expense on the last day", () -> expense(last));
        measure("a receipt of one supply on the last day", () -> receipt(middling(), last));
        measure("a bench entry of one supply, the day after", () -> bench(1, last.plusDays(1)));
        measure("a bench entry of six supplies, the day after", () -> bench(6, last.plusDays(1)));
        measure("a bench entry of one supply on the last day, on which all are counted", () -> bench(1, last));
        measure("a bench entry of six supplies on that day", () -> bench(6, last));
        measure("a receipt of a middling supply, 30 days late", () -> receipt(middling(), last.minusDays(30)));
        measure("a receipt of a middling supply, 365 days late", () -> receipt(middling(), last.minusDays(365)));
        measure("a receipt of the most used supply, 30 days late", () -> receipt(supplies.get(0), last.minusDays(30)));
        measure(
                "a receipt of the most used supply, 365 days late",
                () -> receipt(supplies.get(0), last.minusDays(365)));
    }

    private UUID middling() {
        return supplies.get(supplies.size() / 2);
    }

    private void measure(String what, Supplier<Document> document) {
        long[] times = new long[RUNS];
        for (int run = -3; run < RUNS; run++) {
            Document recorded = document.get();
            long start = System.nanoTime();
            books.record(recorded);
            if (run >= 0) {
                times[run] = (System.nanoTime() - start) / MILLION;
            }
            transaction.executeWithoutResult(state ->
                    books.remove(books.find(Document.class, recorded.id()).orElseThrow()));
        }
        Arrays.sort(times);
        System.out.printf("| %s | %,d ms | %,d ms |%n", what, times[RUNS / 2], times[RUNS - 1]);
    }

    private Document expense(LocalDate day) {
        return new Expense(UUID.randomUUID(), day, "measured", "other", "", cash, Amount.of(1_234));
    }

    private Document receipt(UUID supply, LocalDate day) {
        ReceiptLine line = new ReceiptLine(
                1,
                LineKind.SUPPLY,
                "",
                BigDecimal.ONE,
                Amount.of(1_799),
                null,
                null,
                true,
                supply,
                BigDecimal.TEN,
                null);
        ReceiptContent draft = new ReceiptContent(
                day, "", null, null, Amount.ZERO, List.of(line), List.of(), List.of(), List.of(), List.of());
        Amount total = draft.sums().total();
        return new Receipt(
                UUID.randomUUID(),
                new ReceiptContent(
                        day,
                        "",
                        null,
                        null,
                        total,
                        List.of(line),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(new Tender(1, Way.PLACE, cash, total))));
    }

    private Document bench(int uses, LocalDate day) {
        List<SupplyUse> used = new java.util.ArrayList<>();
        List<UsePiece> on = new java.util.ArrayList<>();
        for (int number = 1; number <= uses; number++) {
            UUID supply = supplies.get(number * (supplies.size() - 1) / uses);
            used.add(new SupplyUse(number, supply, "measured", BigDecimal.ONE, true));
            on.add(new UsePiece(number, pieces.get(number % pieces.size()), BigDecimal.ONE));
        }
        List<BenchPiece> worked =
                pieces.stream().map(piece -> new BenchPiece(piece, false)).toList();
        return new BenchEntry(UUID.randomUUID(), new BenchContent(day, "", 30, "", worked, used, on, List.of()));
    }
}
