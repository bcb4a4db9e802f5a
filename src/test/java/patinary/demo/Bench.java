package patinary.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** Days at the bench: pieces get nearer to ready, supplies get used, now and then something fails. */
final class Bench {

    private static final List<String> DONE = List.of(
            "Washed, sanded, first coat",
            "Second coat",
            "Sealed and let dry",
            "Waxed and buffed",
            "Glued and clamped",
            "Transfer laid and rubbed down",
            "New knobs",
            "Edges gilded",
            "Filled cracks, primed",
            "Rope wound and pinned");
    private static final List<String> PREPARED =
            List.of("Washed and dried", "Sanded and dusted", "Degreased and scuffed", "Washed, primed");

    private final State shop;

    Bench(State shop) {
        this.shop = shop;
    }

    void today() {
        if (shop.isSaturday() || !shop.draws.chance(0.42)) {
            return;
        }
        List<State.Piece> worked = choose();
        if (worked.isEmpty()) {
            return;
        }
        UUID id = shop.draws.id();
        int minutes = shop.draws.between(3, 13) * 5 * worked.size();
        Object[] entry = shop.document(id, "", minutes, shop.draws.one(DONE), "");
        worked.forEach(piece -> work(id, piece));
        List<State.Supply> used = use(id, worked);
        entry[entry.length - 1] =
                Looks.followedWith(used.stream().map(supply -> supply.name).toList());
        shop.rows.add("bench_entry", entry);
        if (!used.isEmpty() && shop.draws.chance(0.06)) {
            fail(id, shop.draws.one(worked), shop.draws.one(used));
        }
    }

    /** On what the piece is made of, with something that can go wrong with that supply. */
    private void fail(UUID entry, State.Piece piece, State.Supply with) {
        String prepared = shop.draws.one(PREPARED);
        String what = shop.draws.one(failures(piece, with));
        shop.rows.add("bench_mishap", entry, 1, piece.id, with.id, piece.material, what, prepared, "");
    }

    private static List<String> failures(State.Piece piece, State.Supply with) {
        if (with.name.contains("sealer") || with.name.contains("blocker")) {
            return List.of("Went cloudy", "Ran at the edge");
        }
        return switch (with.unit) {
            case "cm2" -> List.of("Tore at the edge", "Bubbled up");
            case "g" -> List.of("Stayed sticky", "Went streaky");
            case "ml" ->
                List.of(
                        "Lifted with the tape",
                        piece.material.equals("oak") ? "Tannin bled through" : "Chipped at once");
            default -> List.of("Came loose", "Did not hold");
        };
    }

    /** Works up what was begun first, so that pieces do get finished. */
    private List<State.Piece> choose() {
        List<State.Piece> waiting = new ArrayList<>(shop.in("BENCH"));
        shop.in("FOUND").stream()
                .filter(piece -> piece.since.isBefore(shop.day))
                .forEach(waiting::add);
        int most = shop.draws.chance(0.25) ? 3 : shop.draws.chance(0.4) ? 2 : 1;
        return waiting.stream().limit(most).toList();
    }

    private void work(UUID entry, State.Piece piece) {
        piece.workLeft--;
        boolean ready = piece.workLeft <= 0;
        shop.rows.add("bench_piece", entry, piece.id, ready);
        shop.move(piece, ready ? "READY" : "BENCH");
    }

    private List<State.Supply> use(UUID entry, List<State.Piece> worked) {
        List<State.Supply> used = new ArrayList<>();
        int count = shop.draws.between(1, 3);
        for (int i = 0; i < count; i++) {
            State.Supply supply = shop.draws.one(shop.supplies);
            long quantity = quantity(supply);
            if (supply.bench < quantity || used.contains(supply)) {
                continue;
            }
            used.add(supply);
            take(entry, used.size(), supply, quantity, worked);
        }
        return used;
    }

    private void take(UUID entry, int line, State.Supply supply, long quantity, List<State.Piece> worked) {
        boolean byEye = supply.handy && shop.draws.chance(0.7);
        supply.bench -= quantity;
        shop.rows.add("bench_use", entry, line, supply.id, typed(supply, quantity, byEye), quantity, byEye, "");
        boolean bySize = shop.draws.chance(0.4);
        for (State.Piece piece : worked) {
            shop.rows.add("bench_use_piece", entry, line, piece.id, bySize ? piece.value / 100 : 1);
        }
    }

    private long quantity(State.Supply supply) {
        return switch (supply.unit) {
            case "ml" -> shop.draws.between(3, 20) * 4L;
            case "g" -> shop.draws.between(1, 6) * 4L;
            case "cm2" -> shop.draws.between(2, 9) * 100L;
            case "cm" -> shop.draws.between(2, 20) * 10L;
            default -> shop.supplies.indexOf(supply) < 0 ? 0 : countable(supply);
        };
    }

    private long countable(State.Supply supply) {
        return supply.content > 1000 ? shop.draws.between(30, 200) : shop.draws.between(1, 4);
    }

    private static String typed(State.Supply supply, long quantity, boolean byEye) {
        if (byEye) {
            return quantity / 4 + (supply.unit.equals("g") ? " dabs" : " brush loads");
        }
        if (supply.unit.equals("cm2")) {
            return quantity / 10 + " x 10 cm";
        }
        return (quantity + " " + supply.unit).strip();
    }

    /** Holds the jars against the light: what is left settles what was really used. */
    void count() {
        shop.supplies.stream()
                .filter(supply -> supply.handy && supply.bench > 40)
                .limit(6)
                .forEach(supply -> {
                    supply.bench = (long) (supply.bench * shop.draws.factor(0.9, 1.04));
                    shop.rows.add(
                            "supply_count",
                            shop.document(shop.draws.id(), "", supply.id, "BENCH", supply.bench, false, ""));
                });
    }

    /** A spill: used on no piece. */
    void spill() {
        State.Supply supply =
                shop.supplies.stream().filter(s -> s.bench > 100).findFirst().orElseThrow();
        UUID id = shop.draws.id();
        shop.rows.add("bench_entry", shop.document(id, "Knocked over", 10, "Cleaned up a spill", ""));
        shop.rows.add("bench_use", id, 1, supply.id, "60 " + supply.unit, 60, false, "");
        supply.bench -= 60;
    }

    /** Takes a container from the retail shelf for her own work. */
    void takeFromShelf() {
        shop.supplies.stream().filter(s -> s.shelf >= s.content).findFirst().ifPresent(supply -> {
            shop.rows.add("taking", shop.document(shop.draws.id(), "", supply.id, supply.content, true, false));
            supply.shelf -= supply.content;
            supply.bench += supply.content;
        });
    }
}
