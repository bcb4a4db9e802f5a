package patinary.web;

import java.util.List;

/**
 * One page of a long list.
 *
 * @param rows the rows of this page
 * @param number its number, from 1
 * @param size how many rows a full page has
 * @param total how many rows there are on all pages
 */
public record Page<T>(List<T> rows, int number, int size, long total) {

    /** A page as cut out by a window. */
    public static <T> Page<T> of(Window window, List<T> rows, long total) {
        return new Page<>(List.copyOf(rows), window.number(), window.size(), total);
    }

    /** The page of a whole list that a window shows. */
    public static <T> Page<T> within(List<T> all, Window window) {
        return of(
                window, all.stream().skip(window.offset()).limit(window.size()).toList(), all.size());
    }

    public boolean isEmpty() {
        return rows.isEmpty();
    }

    /** How many pages there are, at least one. */
    public long pages() {
        return Math.max(1, (total + size - 1) / size);
    }

    public boolean hasPrevious() {
        return number > 1;
    }

    public boolean hasNext() {
        return number < pages();
    }

    /** The number of the first row shown, from 1; 0 where there is none. */
    public long first() {
        return rows.isEmpty() ? 0 : (number - 1L) * size + 1;
    }

    /** The number of the last row shown. */
    public long last() {
        return rows.isEmpty() ? 0 : first() + rows.size() - 1;
    }
}
