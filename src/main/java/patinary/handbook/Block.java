package patinary.handbook;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** A part of a page, as the template draws it. Nothing of it is markup: whatever stands in a page is shown as text. */
sealed interface Block {

    /** The word by which the template chooses how to draw it. */
    default String kind() {
        return getClass().getSimpleName().toLowerCase(Locale.ROOT);
    }

    /** @param level from 1 */
    record Heading(int level, String id, List<Run> runs) implements Block {}

    /** @param id of one that begins with the word it is about, so that a page can point to it; else null */
    record Paragraph(@Nullable String id, List<Run> runs) implements Block {}

    /** Formulas and what is typed word for word. */
    record Formula(String text) implements Block {}

    record Listing(boolean numbered, List<List<Block>> items) implements Block {}

    /**
     * A picture of a page of the program.
     *
     * @param address where the program gives it out
     * @param words what is on it, for whoever does not see it
     * @param width in points of the file, which has three for two of the page
     */
    record Picture(String address, String words, int width, int height) implements Block {

        public int shownWidth() {
            return width * 2 / 3;
        }

        public int shownHeight() {
            return height * 2 / 3;
        }
    }

    /** What is set apart. */
    record Quote(List<Block> blocks) implements Block {}

    /**
     * A table.
     *
     * @param about what it stands under, with its number on the page: the name of the box that it scrolls in
     * @param heads empty where no column has a heading
     */
    record Grid(String about, List<List<Run>> heads, List<Row> rows) implements Block {

        /** The heading of a column, as a phone shows it before each cell. */
        public @Nullable String label(int column) {
            String label = column < heads.size() ? Run.plain(heads.get(column)) : "";
            return label.isEmpty() ? null : label;
        }
    }

    /** @param id of a row that defines a word, so that a page can point to it; else null */
    record Row(@Nullable String id, List<List<Run>> cells) {}
}
