package patinary.web;

import org.jspecify.annotations.Nullable;

/**
 * Which part of a long list to read. Sizes are capped, so that no address can ask for everything at once.
 *
 * @param number the page's number, from 1
 * @param size how many rows
 */
public record Window(int number, int size) {

    private static final int USUAL = 50;
    private static final int MOST = 200;
    private static final int LAST = 1_000_000;

    public Window {
        number = Math.min(Math.max(number, 1), LAST);
        size = Math.min(Math.max(size, 1), MOST);
    }

    /** The window asked for by an address; the first page of the usual size where it asks for nothing. */
    public static Window of(@Nullable Integer number) {
        return new Window(number == null ? 1 : number, USUAL);
    }

    /** How many rows come before. */
    public long offset() {
        return (number - 1L) * size;
    }

    /** How many rows there are up to its end, where the list is that long. */
    public long end() {
        return offset() + size;
    }
}
