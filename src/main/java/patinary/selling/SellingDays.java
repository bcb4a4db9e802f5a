package patinary.selling;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/** Reads the day of something that happened: not before the books begin, and not in the future. */
@Component
class SellingDays {

    private final CurrentShop shop;

    SellingDays(CurrentShop shop) {
        this.shop = shop;
    }

    LocalDate read(Answers answers, String field, String typed) {
        LocalDate day = answers.date(field, typed);
        if (day.equals(LocalDate.EPOCH)) {
            return day;
        }
        if (day.isBefore(shop.firstDay())) {
            answers.wrong(
                    field, "selling.error.before-first-day", shop.firstDay().toString());
        }
        if (day.isAfter(shop.today())) {
            answers.wrong(field, "selling.error.future");
        }
        return day;
    }

    String today() {
        return shop.today().toString();
    }
}
