package patinary.labels;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where square and words stand on one label; millimetres from the label's upper left corner.
 *
 * @param module the side of one module of the square
 * @param square the side of the square with its blank margin
 */
record LabelLayout(double module, double square, double textLeft, double textTop, double textWidth, double textHeight) {

    /** What a phone's camera reads well from a hand's breadth; trade guidance, no standard. */
    static final double LEAST_MODULE = 0.4;

    /** A larger one is not read better and takes the room of the words; common practice, no source. */
    private static final double MOST_MODULE = 0.9;

    /** Kept free around everything, since sheets are never fed quite straight. */
    private static final double EDGE = 1;

    /** Room for a code of five signs at 8 pt beside the square. */
    private static final double LEAST_TEXT_WIDTH = 14;

    /** Room for the code and one line of the title below the square. */
    private static final double LEAST_TEXT_HEIGHT = 7.5;

    /**
     * The words beside the square or below it, whichever leaves the square larger.
     *
     * @param modules the modules of a side of the square, with its margin
     * @return empty where a module would be smaller than {@link #LEAST_MODULE}
     */
    static Optional<LabelLayout> of(double width, double height, int modules) {
        return Stream.of(beside(width, height, modules), below(width, height, modules))
                .filter(layout -> layout.module >= LEAST_MODULE)
                .max(Comparator.comparingDouble(LabelLayout::module));
    }

    private static LabelLayout beside(double width, double height, int modules) {
        double room = Math.min(height - 2 * EDGE, width - 2 * EDGE - LEAST_TEXT_WIDTH);
        double module = Math.min(MOST_MODULE, room / modules);
        double square = module * modules;
        return new LabelLayout(module, square, EDGE + square, 2 * EDGE, width - square - 2 * EDGE, height - 4 * EDGE);
    }

    private static LabelLayout below(double width, double height, int modules) {
        double room = Math.min(width - 2 * EDGE, height - 2 * EDGE - LEAST_TEXT_HEIGHT);
        double module = Math.min(MOST_MODULE, room / modules);
        double square = module * modules;
        return new LabelLayout(module, square, 2 * EDGE, EDGE + square, width - 4 * EDGE, height - square - 2 * EDGE);
    }

    /** Where the square with its margin begins, from the left and from above. */
    double edge() {
        return EDGE;
    }
}
