package patinary.labels;

import java.math.BigDecimal;
import java.util.Locale;
import patinary.web.Tongue;

/** What labels come on. Sizes in millimetres: A4 by ISO 216, Letter by ANSI/ASME Y14.1 (8.5 by 11 in); from memory. */
enum Paper {
    LETTER("215.9", "279.4"),
    A4("210", "297"),
    /** One label after the other; the page is the label. */
    ROLL("0", "0");

    private final BigDecimal width;
    private final BigDecimal height;

    Paper(String width, String height) {
        this.width = new BigDecimal(width);
        this.height = new BigDecimal(height);
    }

    /** The sheet that a country prints on. */
    static Paper of(Locale locale) {
        return Tongue.isLetter(locale) ? LETTER : A4;
    }

    BigDecimal width() {
        return width;
    }

    BigDecimal height() {
        return height;
    }
}
