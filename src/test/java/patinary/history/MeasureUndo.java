package patinary.history;

import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.Patinary;
import patinary.ledger.Books;
import patinary.ledger.Document;
import patinary.ledger.Refused;
import patinary.web.Window;

/**
 * How long undoing takes in a shop of any size that is already there, as {@code load} has made it: the latest documents of a kind
 * are removed, and brought back, which is timed. Prints rows for docs/benchmarks.md; {@code .ci/measure-changes SETTING...} runs
 * it. Leaves the shop as it was but for its history.
 */
final class MeasureUndo {

    private static final int RUNS = 9;
    private static final int WARMING = 2;
    private static final long MILLION = 1_000_000;

    private final Books books;
    private final TransactionTemplate transaction;
    private final JdbcClient jdbc;
    private final Undo undo;
    private final Changes changes;

    private MeasureUndo(ConfigurableApplicationContext program) {
        books = program.getBean(Books.class);
        transaction = program.getBean(TransactionTemplate.class);
        jdbc = program.getBean(JdbcClient.class);
        undo = program.getBean(Undo.class);
        changes = program.getBean(Changes.class);
    }

    public static void main(String[] settings) {
        try (ConfigurableApplicationContext program = new SpringApplicationBuilder(Patinary.class).run(settings)) {
            MeasureUndo measure = new MeasureUndo(program);
            for (String kind : List.of("EXPENSE", "SALE", "BENCH_ENTRY", "RECEIPT")) {
                measure.undoing(kind);
            }
        }
        System.exit(0);
    }

    private void undoing(String kind) {
        long[] times = new long[RUNS];
        int run = -WARMING;
        for (UUID id : latest(kind)) {
            if (run == RUNS) {
                break;
            }
            if (isRemoved(id)) {
                UUID act = changes.page(new Changes.Wanted(null, null, "", ""), Window.of(1))
                        .rows()
                        .get(0)
                        .act();
                long start = System.nanoTime();
                undo.undo(act);
                if (run >= 0) {
                    times[run] = (System.nanoTime() - start) / MILLION;
                }
                run++;
            }
        }
        int done = Math.max(0, run);
        long[] sorted = Arrays.copyOf(times, done);
        Arrays.sort(sorted);
        System.out.printf(
                "| a removed document brought back by undo: %s (%d) | %,d ms | %,d ms |%n",
                kind, done, sorted[done / 2], sorted[done - 1]);
    }

    private List<UUID> latest(String kind) {
        return jdbc.sql("select id from document where kind = ? order by doc_date desc, id fetch first 200 rows only")
                .param(kind)
                .query(UUID.class)
                .list();
    }

    private boolean isRemoved(UUID id) {
        try {
            transaction.executeWithoutResult(
                    status -> books.find(Document.class, id).ifPresent(books::remove));
            return true;
        } catch (Refused | DataIntegrityViolationException others) {
            return false;
        }
    }
}
