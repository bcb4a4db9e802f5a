package patinary.bringing;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a row may be: the pieces of the shop by their codes, and what stands on the retail shelf.
 *
 * @param pieces all pieces by code, in capitals
 * @param shelf supplies with the packs they are sold in
 */
record Goods(Map<String, Piece> pieces, List<Retail> shelf) {

    private static final Pattern BETWEEN = Pattern.compile("[\\s,;+]+");

    /**
     * A piece.
     *
     * @param free whether it can still be sold
     */
    record Piece(String code, String title, boolean free) {}

    /** A supply in one of its packs. */
    record Retail(String supply, String name, String content) {

        RowChoice choice() {
            return RowChoice.supply(supply, content);
        }
    }

    static Goods of(List<Piece> pieces, List<Retail> shelf) {
        Map<String, Piece> byCode = pieces.stream()
                .collect(Collectors.toMap(
                        piece -> piece.code().toUpperCase(Locale.ROOT), piece -> piece, (a, b) -> a, TreeMap::new));
        return new Goods(byCode, List.copyOf(shelf));
    }

    /** The codes of a cell, in capitals, as they stand on the labels. */
    static List<String> codes(String text) {
        return BETWEEN.splitAsStream(text.toUpperCase(Locale.ROOT))
                .filter(code -> !code.isBlank())
                .toList();
    }

    /** Whether a cell names pieces by their codes and nothing else. */
    boolean knows(String text) {
        List<String> codes = codes(text);
        return !codes.isEmpty() && codes.stream().allMatch(pieces::containsKey);
    }

    List<Piece> free() {
        return pieces.values().stream().filter(Piece::free).toList();
    }
}
