package patinary.insight;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.money.PriceEndings;
import patinary.shop.Aims;

/**
 * How the sums of the insight pages grow with the shop: invented pieces, 10,000, 100,000 and 1,000,000 of them, ten years long, twelve
 * styles, twelve kinds and thirty supply lines. Prints a table for docs/benchmarks.md; {@code .ci/measure-sums} runs it.
 */
final class SumsGrowth {

    private static final int[] SIZES = {10_000, 100_000, 1_000_000};
    private static final int[] RUNS = {30, 5, 2};
    /** What takes n log n steps by anybody's reckoning: the steps of a machine become slower too, as more of what they need is far away. */
    private static final String SORT = "to compare: as many pieces are put in order";

    private static final double MILLION = 1e6;
    private static final int DAYS = 3_650;
    private static final LocalDate TODAY = LocalDate.of(2025, 12, 31);
    private static final LocalDate FIRST = TODAY.minusDays(DAYS);
    private static final int STYLES = 12;
    private static final int LINES = 30;
    private static final Amount RATE = Amount.of(1_500);
    private static final List<String> CHANNELS = List.of("Fair", "Shop", "Web");

    private final Random random = new Random(1);
    private final Map<UUID, LocalDate> found = new HashMap<>();
    private final List<OfferFacts.Spell> spells = new ArrayList<>();
    private final Map<UUID, List<Span>> pauses = new HashMap<>();
    private final Map<UUID, List<String>> channels = new HashMap<>();
    private final List<OfferFacts.Sold> sold = new ArrayList<>();
    private final List<MoveFacts.Group> groups = new ArrayList<>();
    private final Map<UUID, String> styles = new HashMap<>();
    private final List<MoneyFacts.PieceSale> sales = new ArrayList<>();
    private final List<StockOfPiece> stock = new ArrayList<>();
    private final Map<UUID, BigDecimal> minutes = new HashMap<>();
    private final Map<UUID, Map<String, Amount>> costs = new HashMap<>();
    private final List<Outcome> past = new ArrayList<>();

    private SumsGrowth(int pieces) {
        for (int i = 0; i < pieces; i++) {
            piece(new UUID(random.nextLong(), random.nextLong()), i);
        }
        sold.sort(java.util.Comparator.comparing(OfferFacts.Sold::day));
    }

    public static void main(String[] arguments) {
        Map<String, List<Double>> times = new LinkedHashMap<>();
        for (int i = 0; i < SIZES.length; i++) {
            SumsGrowth shop = new SumsGrowth(SIZES[i]);
            int runs = RUNS[i];
            shop.sums()
                    .forEach((name, sum) ->
                            times.computeIfAbsent(name, n -> new ArrayList<>()).add(best(sum, runs)));
        }
        System.out.println("| sum | 10,000 pieces | 100,000 | 1,000,000 | of n log n, from 100,000 | of that sort |");
        System.out.println("|---|---|---|---|---|---|");
        double most = 10 * Math.log(SIZES[2]) / Math.log(SIZES[1]);
        double sort = growth(times.get(SORT));
        times.forEach((name, each) -> System.out.printf(
                "| %s | %,.1f ms | %,.0f ms | %,.0f ms | %.2f | %.2f |%n",
                name, each.get(0), each.get(1), each.get(2), growth(each) / most, growth(each) / sort));
    }

    private static double growth(List<Double> times) {
        return times.get(2) / times.get(1);
    }

    private Map<String, Supplier<Object>> sums() {
        OfferFacts offers = new OfferFacts(spells, pauses, sold);
        MoveFacts facts = new MoveFacts(found, channels, offers);
        MoneyFacts money = new MoneyFacts(sales, stock, minutes);
        List<Round> rounds = Rounds.of(offers, Map.of(), TODAY);
        Aims aims = new Aims(
                180,
                Amount.ZERO,
                Amount.of(100),
                null,
                Percent.ZERO,
                PriceEndings.parse("", 2).orElseThrow());
        Map<String, Supplier<Object>> sums = new LinkedHashMap<>();
        sums.put("what moves, by style", () -> MoveTable.byPiece(facts, FIRST, TODAY, groups));
        sums.put("what moves, by channel", () -> MoveTable.byChannel(facts, FIRST, TODAY));
        sums.put("the rounds of all pieces", () -> Rounds.of(offers, Map.of(), TODAY));
        sums.put("days to sell, by style", () -> SpeedTable.of(rounds, round -> List.of(style(round.piece()))));
        sums.put("where they sold", () -> SoldWhere.of(rounds, List.of()));
        sums.put("months of the year", () -> SeasonDays.of(offers, TODAY).seasons());
        sums.put("months of first offers", () -> Cohort.of(rounds, TODAY));
        MoneyTable.Grouping grouping = MoneyTable.Grouping.ofPieces(piece -> List.of(style(piece)));
        sums.put("money, by style", () -> MoneyTable.of(money, grouping, DAYS));
        sums.put("money, by supply line", () -> LineShares.of(sales, costs, Set.of()));
        HourTable.Facts hours = new HourTable.Facts(Map.of(YearMonth.from(TODAY), Amount.of(1)), Map.of(), money);
        sums.put("her hour", () -> HourTable.of(hours, new Period(FIRST, TODAY), aims, RATE));
        sums.put(
                "what to make next",
                () -> MakeNext.rows(Pools.of(past, aims.horizonDays(), TODAY), aims, MakeNext.Order.HOUR));
        sums.put("what to pay, tried", () -> PayTrial.of(past, aims, RATE, TODAY));
        sums.put(SORT, () -> past.stream().sorted(Outcome.LATEST).toList());
        return sums;
    }

    private String style(UUID piece) {
        return styles.getOrDefault(piece, "");
    }

    /** The quickest of a few, in processor time of this thread: what else the machine does only adds. */
    private static double best(Supplier<Object> sum, int runs) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        double best = Double.MAX_VALUE;
        for (int run = 0; run < runs; run++) {
            long start = threads.getCurrentThreadCpuTime();
            if (sum.get() == null) {
                throw new IllegalStateException();
            }
            best = Math.min(best, (threads.getCurrentThreadCpuTime() - start) / MILLION);
        }
        return best;
    }

    /** Two of three sell, after 60 days in the mean; one of five pauses, one of ten is in a set with the one before. */
    private void piece(UUID piece, int number) {
        LocalDate came = FIRST.plusDays(random.nextInt(DAYS));
        UUID offer = number % 10 == 1 ? spells.get(spells.size() - 1).offer() : new UUID(1, random.nextLong());
        LocalDate from = came.plusDays(random.nextInt(20));
        LocalDate end = from.plusDays((long) (-60 * Math.log(1 - random.nextDouble())));
        boolean sells = random.nextInt(3) > 0 && !end.isAfter(TODAY);
        String style = "Style " + random.nextInt(STYLES);
        String channel = CHANNELS.get(random.nextInt(CHANNELS.size()));
        found.put(piece, came);
        styles.put(piece, style);
        groups.add(new MoveFacts.Group(piece, style));
        spells.add(new OfferFacts.Spell(piece, offer, new Span(from, sells ? end : null)));
        channels.put(offer, List.of(channel));
        if (random.nextInt(5) == 0) {
            pauses.put(offer, List.of(new Span(from.plusDays(3), from.plusDays(9))));
        }
        long cost = 300 + random.nextInt(700);
        long net = cost + random.nextInt(3_000);
        if (sells) {
            sold.add(new OfferFacts.Sold(piece, end, channel, false, net, cost, net - cost));
            SaleParts parts = new SaleParts(
                    Amount.of(net), Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.of(cost));
            sales.add(new MoneyFacts.PieceSale(offer, piece, end, channel, false, parts, Amount.of(cost / 2)));
            minutes.put(piece, BigDecimal.valueOf(30 + random.nextInt(90)));
            costs.put(piece, Map.of("Line " + random.nextInt(LINES), Amount.of(cost), "Oil", Amount.of(70)));
        }
        stock.add(StockOfPiece.of(piece, came, List.of(new StockOfPiece.Change(came, cost)), FIRST, TODAY));
        past.add(new Outcome(
                piece,
                new PayRow.Group(new UUID(2, random.nextInt(STYLES)), "Kind", new UUID(3, style.hashCode()), style),
                from,
                sells ? end : null,
                sells ? Amount.of(net) : null,
                Amount.of(sells ? 200 : 0),
                Amount.of(cost / 2),
                BigDecimal.valueOf(30 + random.nextInt(90)),
                Amount.of(cost - cost / 2),
                true));
    }
}
