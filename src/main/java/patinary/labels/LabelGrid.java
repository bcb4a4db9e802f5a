package patinary.labels;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Where the labels lie on a page; all lengths in millimetres.
 *
 * @param left from the page's left edge to the first label
 * @param top from the page's upper edge to the first label
 * @param across the gap between two labels side by side
 * @param down the gap between two labels, one below the other
 */
record LabelGrid(
        Paper paper,
        int rows,
        int columns,
        BigDecimal left,
        BigDecimal top,
        BigDecimal width,
        BigDecimal height,
        BigDecimal across,
        BigDecimal down) {

    /** A page may not have more; a sheet with smaller labels could not hold a square that can be scanned. */
    static final int MOST_CELLS = 200;

    /** One label's place on the page, from the upper left corner. */
    record Cell(BigDecimal left, BigDecimal top, BigDecimal width, BigDecimal height) {}

    /** Where a grid cannot be. */
    enum Fault {
        NOTHING,
        TOO_MANY,
        TOO_WIDE,
        TOO_HIGH
    }

    static LabelGrid roll(BigDecimal width, BigDecimal length) {
        BigDecimal none = BigDecimal.ZERO;
        return new LabelGrid(Paper.ROLL, 1, 1, none, none, width, length, none, none);
    }

    BigDecimal pageWidth() {
        return isRoll() ? width : paper.width();
    }

    BigDecimal pageHeight() {
        return isRoll() ? height : paper.height();
    }

    boolean isRoll() {
        return paper == Paper.ROLL;
    }

    /** How many labels a page has. */
    int size() {
        return rows * columns;
    }

    /** The labels of a page, row by row. */
    List<Cell> cells() {
        return IntStream.range(0, size()).mapToObj(this::cell).toList();
    }

    private Cell cell(int index) {
        BigDecimal column = BigDecimal.valueOf(index % columns);
        BigDecimal row = BigDecimal.valueOf(index / columns);
        return new Cell(
                left.add(column.multiply(width.add(across))), top.add(row.multiply(height.add(down))), width, height);
    }

    /** Why no page has this grid; empty where it fits, to the last thousandth. */
    Optional<Fault> fault() {
        if (rows < 1 || columns < 1 || width.signum() <= 0 || height.signum() <= 0) {
            return Optional.of(Fault.NOTHING);
        }
        if ((long) rows * columns > MOST_CELLS) {
            return Optional.of(Fault.TOO_MANY);
        }
        if (end(left, columns, width, across).compareTo(pageWidth()) > 0) {
            return Optional.of(Fault.TOO_WIDE);
        }
        return end(top, rows, height, down).compareTo(pageHeight()) > 0
                ? Optional.of(Fault.TOO_HIGH)
                : Optional.empty();
    }

    /** Where the last label ends. */
    private static BigDecimal end(BigDecimal start, int count, BigDecimal size, BigDecimal gap) {
        return start.add(size.multiply(BigDecimal.valueOf(count))).add(gap.multiply(BigDecimal.valueOf(count - 1L)));
    }
}
