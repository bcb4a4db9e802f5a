package patinary.ledger;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.Patinary;

/** All postings of a shop that is there, derived from its documents: the sums alone. The shop is read before, and left as it was. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class BooksBenchmark {

    /** The data folder of a shop that {@code load} has made. */
    @Param("data")
    public String shop;

    @Param({"FIFO", "AVERAGE"})
    public String method;

    private List<DocumentMoves> documents;

    @Setup
    public void read() {
        try (ConfigurableApplicationContext program = new SpringApplicationBuilder(Patinary.class)
                .logStartupInfo(false)
                .run("--patinary.data=" + shop, "--server.port=0", "--logging.level.root=WARN")) {
            Documents stored = program.getBean(Documents.class);
            documents = program.getBean(TransactionTemplate.class).execute(status -> stored.moves());
        }
    }

    @Benchmark
    public Object allPostings() {
        return Replay.of(StockMethod.valueOf(method), documents);
    }
}
