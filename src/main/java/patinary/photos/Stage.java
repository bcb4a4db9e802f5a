package patinary.photos;

import java.util.List;
import java.util.stream.Stream;
import patinary.web.Choice;

/** What a photo shows: a piece as it was found, under work or finished; or a paper. */
public enum Stage {
    BEFORE,
    DURING,
    AFTER,
    RECEIPT;

    /** The stages of a piece, to choose from. */
    static List<Choice> ofPiece() {
        return Stream.of(BEFORE, DURING, AFTER)
                .map(stage -> Choice.said(stage.name(), stage.messageKey()))
                .toList();
    }

    /** The key of its word. */
    public String messageKey() {
        return "photos.stage." + name();
    }
}
