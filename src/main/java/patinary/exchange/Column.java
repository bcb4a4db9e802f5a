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
        List<String> references) {

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
        return new Column(name, field, type, Presence.REQUIRED, Limit.NONE, 16, 14, List.of(), List.of());
    }

    Column sized(int newSize, int newScale) {
        return new Column(name, field, type, presence, limit, newSize, newScale, words, references);
    }

    Column with(Limit newLimit) {
        return new Column(name, field, type, presence, newLimit, size, scale, words, references);
    }

    Column optional() {
        return new Column(name, field, type, Presence.OPTIONAL, limit, size, scale, words, references);
    }

    Column mayBeBlank() {
        return new Column(name, field, type, Presence.MAY_BE_BLANK, limit, size, scale, words, references);
    }

    Column wordsOf(List<String> newWords) {
        return new Column(name, field, type, presence, limit, size, scale, newWords, references);
    }

    Column referring(List<String> tables) {
        return new Column(name, field, type, presence, limit, size, scale, words, tables);
    }
}
