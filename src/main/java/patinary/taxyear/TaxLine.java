package patinary.taxyear;

import java.math.BigDecimal;
import java.util.Comparator;
import patinary.web.Worded;

/**
 * One line of a tax form in some years.
 *
 * @param meaning what it is for; outlives its number
 * @param line the number as printed on the form
 * @param title the line's title as the form prints it
 * @param name the same in each language
 * @param part the part of the form: income, expenses, cost of goods sold, vehicle
 * @param source where number and title come from
 * @param status how well the source is known
 */
public record TaxLine(
        String meaning, String line, String title, Worded name, String part, String source, String status) {

    private static final String READ = "read";
    private static final String OWN = "own";

    /** Lines in the order of their numbers and letters: 9, 10, 10.1, 20a, 20b. */
    static final Comparator<TaxLine> BY_NUMBER =
            Comparator.comparing(TaxLine::number).thenComparing(TaxLine::line);

    private BigDecimal number() {
        return new BigDecimal(line.replaceFirst("[a-z]+$", ""));
    }

    /** Its title for a page: in the page's language, with the form's own words beside it where they are others. */
    public String named() {
        String here = name.here();
        return here.equals(title) || status.equals(OWN) ? here : here + " · " + title;
    }

    /** Whether the line must be compared with the current form before it is relied on. */
    public boolean check() {
        return !status.equals(READ) && !status.equals(OWN);
    }
}
