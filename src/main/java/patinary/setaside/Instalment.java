package patinary.setaside;

import java.math.BigDecimal;
import java.time.LocalDate;
import patinary.money.Percent;

/**
 * One payment of a tax year.
 *
 * @param number its place in the year, from 1
 * @param periodTo the last day of the income it looks at, from the first day of the year
 * @param factor makes a whole year of that income
 * @param share how much of the year's tax should be paid by then
 * @param due the last day to pay
 * @param whyLater why it is not the usual day, or empty
 * @param source where periods and days come from
 * @param status how well the source is known
 */
record Instalment(
        int number,
        LocalDate periodTo,
        BigDecimal factor,
        Percent share,
        LocalDate due,
        String whyLater,
        String source,
        String status) {}
