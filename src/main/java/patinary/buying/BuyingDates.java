package patinary.buying;

import java.time.LocalDate;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/** The days on which something can have been bought. */
final class BuyingDates {

    private BuyingDates() {}

    /** Notes a day before the books begin, or one that has not come yet. */
    static void check(Answers answers, String field, LocalDate date, CurrentShop shop) {
        if (date.equals(LocalDate.EPOCH)) {
            return;
        }
        if (date.isBefore(shop.firstDay())) {
            answers.wrong(
                    field, "buying.error.before-first-day", shop.firstDay().toString());
        }
        if (date.isAfter(shop.today())) {
            answers.wrong(field, "buying.error.future");
        }
    }
}
