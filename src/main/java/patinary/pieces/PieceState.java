package patinary.pieces;

import java.util.List;
import java.util.stream.Stream;
import patinary.web.Choice;

/** Where a piece stands between found and sold; derived from the documents, never typed. */
enum PieceState {
    FOUND,
    BENCH,
    READY,
    OFFERED,
    SOLD,
    GONE;

    /** The key of the word that pages show. */
    public String key() {
        return "pieces.state." + name();
    }

    /** Whether it is still in her hands. */
    public boolean isHere() {
        return this != SOLD && this != GONE;
    }

    static List<Choice> choices() {
        return Stream.of(values())
                .map(state -> Choice.said(state.name(), state.key()))
                .toList();
    }
}
