package patinary.photos;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The sizes in which a photo is kept; the longest side in pixels, and how heavy it may be. */
public enum Size {
    /** For lists and chips. */
    SMALL(320, 14_500),
    /** For galleries and phones. */
    MIDDLE(960, 300_000),
    /** What is kept of the picture that came; the other two are made from it and can be made again. */
    FULL(2000, 8_000_000);

    private final int longest;
    private final int mostBytes;

    Size(int longest, int mostBytes) {
        this.longest = longest;
        this.mostBytes = mostBytes;
    }

    static Optional<Size> of(String word) {
        return Stream.of(values()).filter(size -> size.word().equals(word)).findFirst();
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    int longest() {
        return longest;
    }

    int mostBytes() {
        return mostBytes;
    }

    /** One side of a picture in this size, never larger than it is. */
    int scaled(int side, int otherSide) {
        int longer = Math.max(side, otherSide);
        return longer <= longest ? side : Math.max(1, Math.round(side * (float) longest / longer));
    }
}
