package patinary.bringing;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * How like two titles are: the number of threes of letters they share, doubled, by the number both have (the coefficient of
 * Dice, 1945, on letter trigrams of each word with a space before and behind; 0 where nothing is shared, 1 where all is).
 * Built once for all pieces.
 */
final class Likeness {

    /** Less like than this is not proposed. Common practice, no source. */
    static final double LEAST = 0.35;

    /** A piece and how like its title is. */
    record Like(Goods.Piece piece, double likeness) {}

    private static final int THREE = 3;

    private final List<Goods.Piece> pieces;
    private final List<Integer> sizes = new ArrayList<>();
    private final Map<String, List<Integer>> having = new HashMap<>();

    Likeness(List<Goods.Piece> pieces) {
        this.pieces = List.copyOf(pieces);
        for (int i = 0; i < this.pieces.size(); i++) {
            Set<String> threes = threes(this.pieces.get(i).title());
            sizes.add(threes.size());
            for (String three : threes) {
                having.computeIfAbsent(three, fresh -> new ArrayList<>()).add(i);
            }
        }
    }

    /** The pieces most like a title, best first; ties in the order of the codes. */
    List<Like> most(String title, int most) {
        Set<String> threes = threes(title);
        Map<Integer, Integer> shared = new HashMap<>();
        for (String three : threes) {
            having.getOrDefault(three, List.of()).forEach(piece -> shared.merge(piece, 1, Integer::sum));
        }
        return shared.entrySet().stream()
                .map(entry -> new Like(
                        pieces.get(entry.getKey()),
                        2.0 * entry.getValue() / (threes.size() + sizes.get(entry.getKey()))))
                .filter(like -> like.likeness() >= LEAST)
                .sorted(Comparator.comparingDouble(Like::likeness)
                        .reversed()
                        .thenComparing(like -> like.piece().code()))
                .limit(most)
                .toList();
    }

    private static Set<String> threes(String title) {
        String plain = Normalizer.normalize(title, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
        Set<String> threes = new HashSet<>();
        for (String word : plain.split(" ")) {
            String spaced = " " + word + " ";
            for (int i = 0; !word.isEmpty() && i + THREE <= spaced.length(); i++) {
                threes.add(spaced.substring(i, i + THREE));
            }
        }
        return threes;
    }
}
