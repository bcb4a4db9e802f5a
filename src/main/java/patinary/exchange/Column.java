package patinary.exchange;

import java.util.List;

/**
 * One column of a file.
 *
 * @param name its name in the header row
 * @param field the column of the database that it is kept in
 * @param type what its cells hold
 * @param presence whether a cell may be empty, and what that means
 * @param limit how small a number may be
 * @param size the most characters of a text, or digits before the point of a decimal
 * @param scale the most digits after the point of a decimal
 * @param words the words it may hold, where it holds words
 * @param references the tables of which one has the id it names; empty where it names none
 * @param later whether it came after the first release: a file of before lacks it, and all its cells are then empty
 */
record Column(
        String name,
        String field,
        Type type,
        Presence presence,
        Limit limit,
        int size,
        int scale,
        List<String> words,
        List<String> references,
        boolean later) {

    enum Presence {
        REQUIRED,
        /** An empty cell says that there is none. */
        OPTIONAL,
        /** An empty cell is a text without a letter. */
        MAY_BE_BLANK
    }

    enum Limit {
        NONE,
        ZERO_OR_MORE,
        ABOVE_ZERO
    }

    static Column of(String name, String field, Type type) {
        return new Column(name, field, type, Presence.REQUIRED, Limit.NONE, 16, 14, List.of(), List.of(), false);
    }

    Column sized(int newSize, int newScale) {
        return new Column(name, field, type, presence, limit, newSize, newScale, words, references, later);
    }

    Column with(Limit newLimit) {
        return new Column(name, field, type, presence, newLimit, size, scale, words, references, later);
    }

    Column optional() {
        return new Column(name, field, type, Presence.OPTIONAL, limit, size, scale, words, references, later);
    }

    Column mayBeBlank() {
        return new Column(name, field, type, Presence.MAY_BE_BLANK, limit, size, scale, words, references, later);
    }

    Column wordsOf(List<String> newWords) {
        return new Column(name, field, type, presence, limit, size, scale, newWords, references, later);
    }

    Column referring(List<String> tables) {
        return new Column(name, field, type, presence, limit, size, scale, words, tables, later);
    }

    /** @throws IllegalStateException where an empty cell would say nothing: such a column cannot have come later */
    Column cameLater() {
        if (presence == Presence.REQUIRED) {
            throw new IllegalStateException(name + " must be there in every file");
        }
        return new Column(name, field, type, presence, limit, size, scale, words, references, true);
    }
}
