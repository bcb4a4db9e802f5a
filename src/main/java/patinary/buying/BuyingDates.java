package patinary.buying;

import java.time.LocalDate;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/** The days on which something can have been bought. */
final class BuyingDates {

    private BuyingDates() {}

    /**
     * The day that was meant by "today" on a phone whose clock may be ahead of the shop's, over a time zone or past
     * midnight: the shop's today, as books know no day to come. A day before, and any day she chose herself, stands.
     *
     * @param day which of the quick answers was chosen
     * @param date what the phone took it for, as typed
     */
    static String onTheClockOf(String day, String date, LocalDate today) {
        boolean ahead = date.strip().equals(today.plusDays(1).toString());
        return ahead && ReceiptForm.TODAY.equals(day) ? today.toString() : date;
    }

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
