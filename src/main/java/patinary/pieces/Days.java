package patinary.pieces;

import java.time.LocalDate;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/** Reads the day of a document: not before the books begin, not after today. */
final class Days {

    private Days() {}

    static LocalDate read(Answers answers, String typed, CurrentShop shop) {
        LocalDate date = answers.date("date", typed);
        if (date.equals(LocalDate.EPOCH)) {
            return date;
        }
        if (date.isBefore(shop.firstDay())) {
            answers.wrong("date", "pieces.error.too-early");
        } else if (date.isAfter(shop.today())) {
            answers.wrong("date", "pieces.error.too-late");
        }
        return date;
    }
}
