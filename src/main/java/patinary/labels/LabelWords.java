package patinary.labels;

import java.util.ArrayList;
import java.util.List;

/** Breaks the words of a label into lines that fit. The code is always whole; the title gives way. */
final class LabelWords {

    /** The smallest print of the code that people read, in points; project rule, 8 pt at least. */
    static final double LEAST_CODE = 8;

    private static final double MOST_CODE = 12;
    private static final double PRICE = 10;
    private static final double TITLE = 8;
    private static final double LEADING = 1.2;
    private static final double MM_PER_POINT = 25.4 / 72;
    private static final String CUT = "…";

    /** How wide a text is, in millimetres, in a print of this many points. */
    @FunctionalInterface
    interface Ruler {
        double width(String text, double points);
    }

    /**
     * A line to be printed.
     *
     * @param points its size
     * @param baseline how far its foot is below the top of the room for the words, in millimetres
     */
    record Line(String text, double points, double baseline) {}

    private final Ruler ruler;
    private final double width;
    private final double height;
    private final List<Line> lines = new ArrayList<>();
    private double used;

    private LabelWords(Ruler ruler, double width, double height) {
        this.ruler = ruler;
        this.width = width;
        this.height = height;
    }

    /** The lines of one label; {@code price} may be empty. */
    static List<Line> of(String code, String price, String title, Ruler ruler, double width, double height) {
        LabelWords words = new LabelWords(ruler, width, height);
        words.code(code);
        if (!price.isEmpty() && words.hasRoomFor(PRICE)) {
            words.add(words.clipped(price, PRICE), PRICE);
        }
        words.title(title);
        return List.copyOf(words.lines);
    }

    private void code(String code) {
        double points = MOST_CODE;
        while (points > LEAST_CODE && ruler.width(code, points) > width) {
            points -= 0.5;
        }
        String rest = code;
        while (!rest.isEmpty()) {
            int fitting = fitting(rest, points);
            add(rest.substring(0, fitting), points);
            rest = rest.substring(fitting).strip();
        }
    }

    private void title(String title) {
        String rest = title.strip();
        while (!rest.isEmpty() && hasRoomFor(TITLE)) {
            boolean last = used + 2 * line(TITLE) > height;
            String line = last ? clipped(rest, TITLE) : wordsThatFit(rest);
            add(line, TITLE);
            rest = last ? "" : rest.substring(line.length()).strip();
        }
    }

    /** As many whole words as fit; a part of the first where even that is too long. */
    private String wordsThatFit(String text) {
        int fitting = fitting(text, TITLE);
        if (fitting == text.length()) {
            return text;
        }
        int space = text.lastIndexOf(' ', fitting);
        return space > 0 ? text.substring(0, space) : text.substring(0, fitting);
    }

    private String clipped(String text, double points) {
        if (ruler.width(text, points) <= width) {
            return text;
        }
        int end = text.length();
        while (end > 1 && ruler.width(text.substring(0, end).stripTrailing() + CUT, points) > width) {
            end = text.offsetByCodePoints(end, -1);
        }
        return text.substring(0, end).stripTrailing() + CUT;
    }

    /** How many characters fit into one line, at least one. */
    private int fitting(String text, double points) {
        int end = text.length();
        while (text.codePointCount(0, end) > 1 && ruler.width(text.substring(0, end), points) > width) {
            end = text.offsetByCodePoints(end, -1);
        }
        return end;
    }

    private boolean hasRoomFor(double points) {
        return used + line(points) <= height;
    }

    private void add(String text, double points) {
        lines.add(new Line(text, points, used + points * MM_PER_POINT));
        used += line(points);
    }

    private static double line(double points) {
        return points * LEADING * MM_PER_POINT;
    }
}
