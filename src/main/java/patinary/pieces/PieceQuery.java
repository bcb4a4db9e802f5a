package patinary.pieces;

import java.util.List;
import java.util.stream.Stream;
import patinary.web.Choice;

/**
 * Which pieces the list is to show, as the address says it. What cannot be read is left out of the search.
 *
 * @param words looked for in code, title and tags
 * @param state a {@link PieceState}, or empty
 * @param kind the id of a kind, or empty
 * @param style the id of a style, or empty
 * @param source the id of a source, or empty
 * @param place where it is, in so many words, or empty
 * @param sort a {@link Sort}, or empty
 */
record PieceQuery(String words, String state, String kind, String style, String source, String place, String sort) {

    /** In which order; each ends with the code, so that no order is left to chance. */
    enum Sort {
        NEWEST("s.found_on desc nulls last, p.code desc"),
        CODE("p.code"),
        TITLE("lower(p.title), p.code"),
        LONGEST("s.since nulls last, p.code");

        private final String order;

        Sort(String order) {
            this.order = order;
        }

        String order() {
            return order;
        }
    }

    Sort order() {
        return Stream.of(Sort.values())
                .filter(known -> known.name().equals(sort))
                .findFirst()
                .orElse(Sort.NEWEST);
    }

    /** Whether anything narrows the list, so that "none found" differs from "none there". */
    public boolean isNarrow() {
        return !(words + state + kind + style + source + place).isBlank();
    }

    static List<Choice> sorts() {
        return Stream.of(Sort.values())
                .map(sort -> Choice.said(sort.name(), "pieces.sort." + sort.name()))
                .toList();
    }
}
