package patinary.ledger;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.function.Supplier;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.Patinary;

/**
 * How fast all postings of a shop that is already there are derived anew: reading the documents, the pure sums alone, and all of it with
 * everything that is stored. {@code .ci/measure-rebuild} runs it on one core; the best of a few runs, since the first ones pay for the
 * compiling. Leaves the shop as it was.
 */
final class MeasureRebuild {

    private static final int RUNS = 7;
    private static final double BILLION = 1e9;

    private final ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    private final Documents documents;
    private final Books books;
    private final BooksSettings settings;
    private final TransactionTemplate transaction;

    private MeasureRebuild(ConfigurableApplicationContext program) {
        documents = program.getBean(Documents.class);
        books = program.getBean(Books.class);
        settings = program.getBean(BooksSettings.class);
        transaction = program.getBean(TransactionTemplate.class);
    }

    public static void main(String[] settings) {
        try (ConfigurableApplicationContext program = new SpringApplicationBuilder(Patinary.class).run(settings)) {
            new MeasureRebuild(program).run();
        }
        System.exit(0);
    }

    private void run() {
        List<DocumentMoves> all = transaction.execute(status -> documents.moves());
        int postings = Replay.of(settings.stockMethod(), all).entries().size();
        System.out.printf("%,d documents, %,d postings%n", all.size(), postings);
        System.out.println(
                "| what | processor time | postings a second | bytes allocated a posting |\n|---|---|---|---|");
        measure("the documents are read", postings, () -> transaction.execute(status -> documents.moves()));
        measure("the sums alone", postings, () -> Replay.of(settings.stockMethod(), all));
        measure("all of it, stored", postings, () -> {
            books.rederive();
            return all;
        });
    }

    private void measure(String what, int postings, Supplier<?> work) {
        double best = Double.MAX_VALUE;
        long bytes = 0;
        for (int run = 0; run < RUNS; run++) {
            long before = threads.getCurrentThreadCpuTime();
            long allocated = threads.getCurrentThreadAllocatedBytes();
            if (work.get() == null) {
                throw new IllegalStateException("Nothing came of it");
            }
            best = Math.min(best, (threads.getCurrentThreadCpuTime() - before) / BILLION);
            bytes = threads.getCurrentThreadAllocatedBytes() - allocated;
        }
        System.out.printf("| %s | %.2f s | %,.0f | %,d |%n", what, best, postings / best, bytes / postings);
    }
}
