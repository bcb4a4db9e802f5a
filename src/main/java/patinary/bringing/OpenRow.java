package patinary.bringing;

import java.util.List;
import patinary.web.Choice;

/**
 * A row as the page shows it.
 *
 * @param order what the file says of it
 * @param likely the pieces most like its title, best first
 */
record OpenRow(
        int number,
        long line,
        String order,
        String date,
        String title,
        String code,
        String price,
        List<Choice> likely) {}
