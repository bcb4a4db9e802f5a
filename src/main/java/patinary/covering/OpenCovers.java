package patinary.covering;

import java.time.LocalDate;
import java.util.List;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.Amount;

/** What is not explained yet of payouts and of reported gross, for whoever closes a year. */
@Service
@Transactional(readOnly = true)
public class OpenCovers {

    /**
     * Something not explained.
     *
     * @param link where it can be put right
     * @param day the day of the payout, or the last day of the reported time
     * @param place the balance concerned
     * @param amount the payout with its fee; or the part of the reported gross that no reason explains
     */
    public record Open(String link, LocalDate day, String place, Amount amount) {}

    private final CoverBook covers;
    private final GrossBook gross;

    OpenCovers(CoverBook covers, GrossBook gross) {
        this.covers = covers;
        this.gross = gross;
    }

    /** The payouts between two days of which nothing is said, or of which what is said does not add up. */
    public List<Open> payouts(LocalDate first, LocalDate last) {
        return covers.between(first, last).stream()
                .filter(cover -> cover.state() != Cover.State.MATCHED)
                .map(Cover::payout)
                .map(payout -> new Open("/payouts/" + payout.id(), payout.docDate(), payout.place(), payout.out()))
                .toList();
    }

    /** The reported figures of times that end between two days and are not explained to the cent. */
    public List<Open> gross(LocalDate first, LocalDate last) {
        return gross.all().stream()
                .filter(one ->
                        !one.coversTo().isBefore(first) && !one.coversTo().isAfter(last))
                .map(one -> new Open(
                        "/gross-reported/" + one.id(),
                        one.coversTo(),
                        one.place(),
                        gross.bridge(one).unexplained()))
                .filter(open -> !open.amount().isZero())
                .toList();
    }
}
