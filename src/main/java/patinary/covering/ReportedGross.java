package patinary.covering;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.Amount;

/** The reported grosses with the way to each, for the records of a year. */
@Service
@Transactional(readOnly = true)
public class ReportedGross {

    /**
     * One row of the way. The rows of one report add to zero.
     *
     * @param what {@code BOOKS} to begin with, the reasons, {@code UNEXPLAINED}, and {@code REPORTED}, negative
     */
    public record Step(String processor, LocalDate from, LocalDate to, String what, Amount amount) {}

    private final GrossBook book;

    ReportedGross(GrossBook book) {
        this.book = book;
    }

    /** The reports whose time begins or ends in a year. */
    public List<Step> of(int year) {
        return book.all().stream()
                .filter(one ->
                        one.coversFrom().getYear() == year || one.coversTo().getYear() == year)
                .flatMap(one -> steps(one).stream())
                .toList();
    }

    private List<Step> steps(GrossReported one) {
        GrossBridge bridge = book.bridge(one);
        List<Step> steps = new ArrayList<>();
        steps.add(step(one, "BOOKS", bridge.start()));
        bridge.steps()
                .forEach(step -> steps.add(
                        step(one, step.reason().toUpperCase(Locale.ROOT).replace('-', '_'), step.amount())));
        steps.add(step(one, "UNEXPLAINED", bridge.unexplained()));
        steps.add(step(one, "REPORTED", one.amount().negated()));
        return steps;
    }

    private static Step step(GrossReported one, String what, Amount amount) {
        return new Step(one.place(), one.coversFrom(), one.coversTo(), what, amount);
    }
}
