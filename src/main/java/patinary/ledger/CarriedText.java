package patinary.ledger;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is carried forward of a supply as lines of {@link Words}, in which the store keeps it; the first says what the line is about. */
final class CarriedText {

    private static final String AT = "at";
    private static final String LOT = "lot";
    private static final String LATEST = "latest";
    private static final String USE = "use";

    private CarriedText() {}

    static String of(List<Carried.AtPlace> places) {
        List<String> lines = new ArrayList<>();
        places.forEach(place -> {
            lines.add(Words.line(
                    AT, place.place(), place.whole(), numbers(place.waiting()), numbers(place.sinceCount())));
            place.lots().forEach(lot -> lines.add(lot(LOT, lot)));
            if (place.latest() != null) {
                lines.add(lot(LATEST, place.latest()));
            }
            place.uses().forEach(use -> lines.add(use(use)));
        });
        return String.join("\n", lines);
    }

    private static String numbers(List<Integer> numbers) {
        return Words.list(numbers, String::valueOf);
    }

    private static String lot(String word, Carried.LotLeft lot) {
        return Words.line(
                word, Words.number(lot.quantity()), lot.cost().minor(), lot.estimated(), Words.number(lot.taken()));
    }

    private static String use(Carried.OpenUse use) {
        return Words.line(
                USE,
                use.document().id(),
                use.document().kind(),
                use.document().date(),
                MoveText.of(use.move()),
                Words.number(use.costed()),
                Words.number(use.waiting()),
                use.cost().minor(),
                use.priceRemembered(),
                use.charged().minor(),
                Words.number(use.more()));
    }

    static List<Carried.AtPlace> read(String text) {
        List<Reading> places = new ArrayList<>();
        text.lines().map(Words::new).forEach(words -> {
            String word = words.next();
            if (word.equals(AT)) {
                places.add(new Reading(words));
            } else {
                places.get(places.size() - 1).take(word, words);
            }
        });
        return places.stream().map(Reading::place).toList();
    }

    /** A place of which some lines are read. */
    private static final class Reading {

        private final StockPlace place;
        private final boolean whole;
        private final List<Integer> waiting;
        private final List<Integer> sinceCount;
        private final List<Carried.LotLeft> lots = new ArrayList<>();
        private final List<Carried.OpenUse> uses = new ArrayList<>();
        private Carried.@Nullable LotLeft latest;

        Reading(Words words) {
            place = words.place();
            whole = words.yes();
            waiting = words.list(Integer::valueOf);
            sinceCount = words.list(Integer::valueOf);
        }

        void take(String word, Words words) {
            switch (word) {
                case LOT -> lots.add(lot(words));
                case LATEST -> latest = lot(words);
                case USE -> uses.add(use(words));
                default -> throw new IllegalArgumentException("Not carried forward: " + word);
            }
        }

        Carried.AtPlace place() {
            return new Carried.AtPlace(place, lots, latest, uses, waiting, sinceCount, whole);
        }

        private static Carried.LotLeft lot(Words words) {
            return new Carried.LotLeft(words.number(), words.amount(), words.yes(), words.number());
        }

        private static Carried.OpenUse use(Words words) {
            DocumentRef document = words.document();
            Move.SupplyOut move = (Move.SupplyOut) MoveText.read(words);
            return new Carried.OpenUse(
                    document,
                    move,
                    words.number(),
                    words.number(),
                    words.amount(),
                    words.yes(),
                    words.amount(),
                    words.number());
        }
    }
}
