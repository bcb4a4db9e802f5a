package patinary.covering;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;

/** What a payout covers, by hand: the worked example of docs/handbook/payouts.md. All figures are invented. */
class CoverTest {

    private static final UUID PLACE = new UUID(3, 3);

    private final Movement sale = movement(1, "2026-03-02", "SALE", 4710);
    private final Movement other = movement(2, "2026-03-05", "SALE", 2325);
    private final Movement refund = movement(3, "2026-03-09", "REFUND", -1500);
    private final Movement late = movement(4, "2026-03-11", "SALE", 1810);
    private final Movement later = movement(5, "2026-03-20", "SALE", 900);
    private final List<Movement> all = List.of(later, late, refund, other, sale);

    @Test
    void takesWholeDaysFirst() {
        List<Fit> fits = FitSearch.of(all, day("2026-03-12"), Amount.of(5535));
        assertThat(fits.get(0).isWhole()).isTrue();
        assertThat(fits.get(0).upTo()).isEqualTo(day("2026-03-09"));
        assertThat(fits.get(0).movements()).containsExactly(sale, other, refund);
    }

    @Test
    void takesTheDaysBetweenWhereOlderOnesStayOpen() {
        List<Fit> fits = FitSearch.of(all, day("2026-03-12"), Amount.of(2635));
        assertThat(fits.get(0).movements()).containsExactly(other, refund, late);
        assertThat(fits.get(0).from()).isEqualTo(day("2026-03-05"));
    }

    @Test
    void leavesOutOrAddsOneOrTwo() {
        Fit without = FitSearch.of(all, day("2026-03-12"), Amount.of(4710 - 1500 + 1810))
                .get(0);
        assertThat(without.leftOut()).containsExactly(other);
        assertThat(without.movements()).containsExactly(sale, refund, late);
        Fit with = FitSearch.of(all, day("2026-03-12"), Amount.of(4710 + 1810)).get(0);
        assertThat(with.movements()).containsExactlyInAnyOrder(sale, late);
    }

    @Test
    void proposesNothingWhereNothingAddsUpAndNothingLater() {
        assertThat(FitSearch.of(all, day("2026-03-12"), Amount.of(5534))).isEmpty();
        assertThat(FitSearch.of(all, day("2026-03-12"), Amount.of(900))).isEmpty();
        assertThat(FitSearch.of(List.of(), day("2026-03-12"), Amount.of(900))).isEmpty();
    }

    @Test
    void showsWhatIsDifferentAndWhatChanged() {
        PayoutFacts payout = payout("2026-03-12", 5510, 25, 5535L);
        List<Part> parts = List.of(part(sale, 4710), part(other, 2325), part(refund, -1500));
        assertThat(new Cover(payout, parts).state()).isEqualTo(Cover.State.MATCHED);

        Cover changed = new Cover(payout, List.of(part(sale, 4700), part(other, 2325), part(refund, -1500)));
        assertThat(changed.changed()).hasSize(1);
        Cover removed = new Cover(payout, parts.subList(0, 2));
        assertThat(removed.state()).isEqualTo(Cover.State.DIFFERENT);
        assertThat(removed.removed()).isEqualTo(Amount.of(-1500));
        assertThat(removed.difference()).isEqualTo(Amount.of(-1500));
        Cover early = new Cover(payout("2026-03-08", 5510, 25, 5535L), parts);
        assertThat(early.difference()).isEqualTo(Amount.ZERO);
        assertThat(early.late()).extracting(Part::movement).containsExactly(refund);
        assertThat(early.state()).isEqualTo(Cover.State.DIFFERENT);
        assertThat(new Cover(payout("2026-03-12", 5510, 25, null), List.of()).state())
                .isEqualTo(Cover.State.OPEN);
    }

    /** The second worked example of docs/handbook/payouts.md. */
    @Test
    void leadsFromTheBooksToTheReportedGross() {
        GrossReported reported =
                new GrossReported(new UUID(8, 8), PLACE, "", day("2026-01-01"), day("2026-12-31"), 4200, false, "", 0);
        GrossFacts.Paid turned = new GrossFacts.Paid(new UUID(2, 1), day("2026-12-31"), "SALE", "", 11236);
        GrossFacts facts = new GrossFacts(14000, 600, 636, 0, 1500, 420, 11236 + 1000, 1200, 2000, 0, List.of(turned));
        GrossBridge bridge = GrossBridge.of(reported, facts);
        assertThat(bridge.start()).isEqualTo(Amount.of(12080));
        assertThat(bridge.steps())
                .extracting(GrossBridge.Step::reason)
                .containsExactly("fees", "refunds", "shipping", "tax", "elsewhere", "others", "later", "not-here");
        assertThat(bridge.steps())
                .extracting(step -> step.amount().minor())
                .containsExactly(420L, 1500L, 600L, 636L, -3000L, 1200L, 2000L, -11236L);
        assertThat(bridge.explained()).isEqualTo(Amount.of(4200));
        assertThat(bridge.unexplained()).isEqualTo(Amount.ZERO);
        GrossFacts early = new GrossFacts(
                0,
                0,
                0,
                50,
                0,
                0,
                0,
                0,
                0,
                800,
                List.of(new GrossFacts.Paid(PLACE, day("2027-01-01"), "SALE", "", 4200)));
        assertThat(GrossBridge.of(reported, early).steps())
                .containsExactly(
                        new GrossBridge.Step("income", Amount.of(800)), new GrossBridge.Step("here", Amount.of(4200)));
    }

    @Test
    void sumsByAge() {
        List<Ages.Row> ages = Ages.of(all, day("2026-03-20"));
        assertThat(ages).extracting(Ages.Row::count).containsExactly(1, 4, 0, 0);
        assertThat(ages.get(1).sum()).isEqualTo(Amount.of(4710 + 2325 - 1500 + 1810));
    }

    /** Whatever is ticked, what is not covered less what was paid out beyond is the balance. */
    @Property(tries = 300)
    void addsUpToTheBalance(@ForAll long seed) {
        Random random = new Random(seed);
        List<Movement> movements = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            movements.add(movement(i, "2026-01-01", "SALE", random.nextInt(9000) - 2000));
        }
        List<PayoutFacts> payouts = new ArrayList<>();
        List<Part> parts = new ArrayList<>();
        long out = 0;
        for (int i = 0; i < 5; i++) {
            PayoutFacts payout = new PayoutFacts(
                    new UUID(5, i),
                    day("2026-02-01"),
                    PLACE,
                    "",
                    "",
                    random.nextInt(20000),
                    random.nextInt(50),
                    null,
                    0L);
            payouts.add(payout);
            out += payout.out().minor();
        }
        for (Movement movement : movements) {
            int to = random.nextInt(8);
            if (to < 5) {
                parts.add(new Part(payouts.get(to).id(), movement, random.nextInt(9000)));
            }
        }
        BalanceCover cover = BalanceCover.of(movements, payouts, parts);
        assertThat(cover.balance()).isEqualTo(Movement.sum(movements).minus(Amount.of(out)));
    }

    /** Every proposal adds up exactly, of movements up to the day, and none is there twice. */
    @Property(tries = 300)
    void everyProposalAddsUp(@ForAll long seed) {
        Random random = new Random(seed);
        List<Movement> movements = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            LocalDate day = LocalDate.of(2026, 1, 1).plusDays(random.nextInt(40));
            movements.add(movement(i, day.toString(), "SALE", 1 + random.nextInt(60)));
        }
        LocalDate day = LocalDate.of(2026, 1, 1).plusDays(random.nextInt(45));
        Amount target = Amount.of(1 + random.nextInt(1500));
        List<Fit> fits = FitSearch.of(movements, day, target);
        assertThat(fits).hasSizeLessThanOrEqualTo(FitSearch.MOST);
        assertThat(fits.stream().map(Fit::documents).distinct()).hasSize(fits.size());
        assertThat(fits).allSatisfy(fit -> {
            assertThat(Movement.sum(fit.movements())).isEqualTo(target);
            assertThat(fit.movements()).noneMatch(m -> m.docDate().isAfter(day));
            assertThat(fit.documents()).hasSize(fit.movements().size());
        });
    }

    private static Part part(Movement movement, long said) {
        return new Part(new UUID(4, 4), movement, said);
    }

    private static PayoutFacts payout(String date, long amount, long fee, @Nullable Long total) {
        return new PayoutFacts(
                new UUID(4, 4), day(date), PLACE, "", "", amount, fee, total == null ? null : day(date), total);
    }

    private static Movement movement(int id, String date, String kind, long cents) {
        return new Movement(new UUID(2, id), day(date), kind, null, "", "", cents);
    }

    private static LocalDate day(String date) {
        return LocalDate.parse(date);
    }
}
