package patinary.demo;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * Lives through sixteen invented months, day by day, and keeps a row of everything that happened. The same seed gives
 * the same shop; db/demo holds what came out.
 */
public final class DemoShop {

    private static final long SEED = 20250101;

    private final State shop = new State(SEED);
    private final Finding finding = new Finding(shop);
    private final Buying buying = new Buying(shop, finding);
    private final Bench bench = new Bench(shop);
    private final Offering offering = new Offering(shop);
    private final Selling selling = new Selling(shop, offering);
    private final Spending spending = new Spending(shop);

    /** What happens once, beside the everyday. */
    private final Map<LocalDate, Runnable> once = Map.ofEntries(
            Map.entry(LocalDate.of(2025, 2, 10), bench::spill),
            Map.entry(LocalDate.of(2025, 3, 12), () -> letGo("BROKEN", "Slipped off the trestle")),
            Map.entry(LocalDate.of(2025, 3, 31), bench::count),
            Map.entry(LocalDate.of(2025, 4, 22), buying::returnSupply),
            Map.entry(LocalDate.of(2025, 5, 6), selling::refundPart),
            Map.entry(LocalDate.of(2025, 5, 20), buying::returnPiece),
            Map.entry(LocalDate.of(2025, 6, 3), bench::takeFromShelf),
            Map.entry(LocalDate.of(2025, 6, 14), selling::takeDeposit),
            Map.entry(LocalDate.of(2025, 6, 30), bench::count),
            Map.entry(LocalDate.of(2025, 7, 15), () -> letGo("GIVEN_AWAY", "School raffle")),
            Map.entry(LocalDate.of(2025, 9, 9), () -> selling.refundWhole(false)),
            Map.entry(LocalDate.of(2025, 9, 16), this::joinPieces),
            Map.entry(LocalDate.of(2025, 9, 30), bench::count),
            Map.entry(LocalDate.of(2025, 10, 7), bench::takeFromShelf),
            Map.entry(LocalDate.of(2025, 11, 25), () -> selling.refundWhole(true)),
            Map.entry(LocalDate.of(2025, 12, 31), bench::count),
            Map.entry(LocalDate.of(2026, 1, 13), () -> selling.refundWhole(false)),
            Map.entry(LocalDate.of(2026, 2, 3), () -> letGo("KEPT", "For her own hall")),
            Map.entry(LocalDate.of(2026, 3, 3), bench::takeFromShelf),
            Map.entry(LocalDate.of(2026, 3, 31), bench::count));

    /** Market days after which the cash box was counted: short, right, and over. */
    private final Map<LocalDate, Runnable> evening = Map.of(
            LocalDate.of(2025, 6, 28), () -> spending.countTheCash("A coin rolled under the trestle", -300),
            LocalDate.of(2025, 9, 27), () -> spending.countTheCash("", 0),
            LocalDate.of(2025, 11, 29), () -> spending.countTheCash("Too little change given", 150));

    private DemoShop() {}

    /** The rows of every table. */
    public static Rows invent() {
        DemoShop demo = new DemoShop();
        demo.live();
        return demo.shop.rows;
    }

    private void live() {
        new Catalogue(shop).fill();
        new FirstDay(shop, finding).open();
        while (shop.day.isBefore(State.LAST)) {
            shop.day = shop.day.plusDays(1);
            buying.today();
            bench.today();
            once.getOrDefault(shop.day, () -> {}).run();
            selling.today();
            offering.today();
            spending.today();
            evening.getOrDefault(shop.day, () -> {}).run();
        }
        offering.finish();
        new Covering(shop).cover();
        new Looks(shop).plan();
        new Texts(shop).write();
        new MarketDays(shop).write();
        new Handling(shop).write();
        new BroughtFile(shop).write();
        new Parcels(shop).write();
        new Bundling(shop).write();
        new Cancelling(shop).write();
        new Mail(shop).write();
        new Agreeing(shop).write();
        new Covering(shop).report();
        new Driving(shop).write();
        new YearEnds(shop).write();
        new Changing(shop).write();
        new Aiming(shop).write();
    }

    private void letGo(String reason, String note) {
        State.Piece piece = shop.in("FOUND").stream()
                .filter(found -> found.since.isBefore(shop.day))
                .findFirst()
                .or(() -> shop.in("BENCH").stream().findFirst())
                .orElseThrow();
        shop.rows.add("letting_go", shop.document(shop.draws.id(), note, piece.id, reason));
        shop.move(piece, "GONE");
    }

    /** Two small things become parts of one: their cost goes along. */
    private void joinPieces() {
        List<State.Piece> parts = shop.in("FOUND").stream()
                .filter(found -> found.since.isBefore(shop.day))
                .limit(2)
                .toList();
        UUID id = shop.draws.id();
        shop.rows.add("regrouping", shop.document(id, "Frame and tray became one"));
        parts.forEach(part -> {
            shop.rows.add("regrouping_from", id, part.id);
            shop.move(part, "GONE");
        });
        shop.rows.add("regrouping_to", id, finding.pieces(1).get(0).id, 1);
    }
}
