package patinary.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import patinary.money.Amount;

/** One supply followed through ten years: as many moves as the longest strand of the invented shop of 20,000 pieces has. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class StrandBenchmark {

    private static final int MOVES = 5_453;
    private static final int YEARS_IN_DAYS = 3_650;
    private static final LocalDate FIRST = LocalDate.of(2016, 1, 1);
    private static final UUID SUPPLY = new UUID(1, 1);
    /** One of so many moves is a purchase of as much as the uses between take on average. */
    private static final int USES = 15;

    private static final int MOST_USED = 40;

    @Param({"FIFO", "AVERAGE"})
    public String method;

    /** How many days before the end a change lies: what is before it is followed and not told. */
    @Param({"30", "365", "3650"})
    public int daysBack;

    private final List<StrandMove> moves = new ArrayList<>();
    private DocumentRef from;

    @Setup
    public void invent() {
        Random random = new Random(1);
        for (int i = 0; i < MOVES; i++) {
            LocalDate day = FIRST.plusDays((long) YEARS_IN_DAYS * i / MOVES);
            boolean bought = i % USES == 0;
            DocumentRef document =
                    new DocumentRef(new UUID(2, i), bought ? DocumentKind.RECEIPT : DocumentKind.BENCH_ENTRY, day);
            moves.add(new StrandMove(SUPPLY, document, 0, bought ? bought(random) : used(random, i)));
        }
        moves.sort(StrandMove.CANONICAL);
        from = new DocumentRef(
                new UUID(0, 0),
                DocumentKind.RECEIPT,
                FIRST.plusDays(YEARS_IN_DAYS).minusDays(daysBack));
    }

    private static Move bought(Random random) {
        return new Move.SupplyIn(
                SUPPLY,
                StockPlace.BENCH,
                BigDecimal.valueOf((long) USES * MOST_USED / 2),
                Amount.of(500 + random.nextInt(300)),
                false);
    }

    private static Move used(Random random, int number) {
        BigDecimal quantity = BigDecimal.valueOf(1 + random.nextInt(MOST_USED));
        List<PieceShare> piece = PieceShare.equal(List.of(new UUID(3, number)));
        return new Move.SupplyOut(SUPPLY, StockPlace.BENCH, quantity, false, new Move.Destination.Pieces(piece));
    }

    @Benchmark
    public Object followed() {
        return SupplyRun.of(StockMethod.valueOf(method), List.of(), moves, from, new Carried.Rule(50, 20));
    }
}
