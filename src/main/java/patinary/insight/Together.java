package patinary.insight;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** What pieces are brought together by. */
enum Together {
    /** Kind and style, where a group without one of them is that of the pieces that have none. */
    BOTH,
    KIND,
    STYLE,
    /** Kind, style or both, as far as the group has them. */
    ANY;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Together> of(String word) {
        return Stream.of(BOTH, KIND, STYLE)
                .filter(level -> level.word().equals(word))
                .findFirst();
    }

    /** The group of a piece, on this level. */
    PayRow.Group of(PayRow.Group group) {
        return this == KIND ? group.kindOnly() : this == STYLE ? group.styleOnly() : group;
    }

    /** Whether a piece of some kind and style belongs to a group of this level. */
    boolean holds(PayRow.Group group, PayRow.Group ofPiece) {
        boolean anyKind = this == STYLE || this == ANY && group.kindId() == null;
        boolean anyStyle = this == KIND || this == ANY && group.styleId() == null;
        return (anyKind || Objects.equals(group.kindId(), ofPiece.kindId()))
                && (anyStyle || Objects.equals(group.styleId(), ofPiece.styleId()));
    }
}
