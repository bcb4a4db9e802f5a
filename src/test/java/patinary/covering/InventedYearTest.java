package patinary.covering;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;

/** An invented year of 2,000 sales over four channels reconciles; what is broken in it is found. */
class InventedYearTest {

    private final InventedYear year = new InventedYear(20250101, 2000, 4);

    @Test
    void everyPayoutIsFoundByItsDayAndTheRestIsTheBalance() {
        assertThat(year.sales).hasSize(2000);
        assertThat(year.refunds.size()).isGreaterThan(100);
        assertThat(year.payments.size()).isGreaterThan(300);
        assertThat(year.payouts.size()).isGreaterThan(40);
        for (int channel = 0; channel < year.channels; channel++) {
            List<Movement> all = year.movements(channel);
            List<Movement> open = new ArrayList<>(all);
            List<PayoutFacts> payouts = new ArrayList<>();
            List<Part> parts = new ArrayList<>();
            for (InventedYear.Out out : of(channel)) {
                PayoutFacts facts = Broken.facts(out, 0, 0, out.amount() + out.fee());
                List<Fit> fits = FitSearch.of(open, out.day(), facts.out());
                assertThat(fits).as("payout of %s", out.day()).isNotEmpty();
                assertThat(fits.get(0).isWhole()).isTrue();
                assertThat(fits.get(0).movements()).containsExactlyInAnyOrderElementsOf(out.covers());
                open.removeAll(fits.get(0).movements());
                fits.get(0).movements().forEach(m -> parts.add(new Part(out.id(), m, m.amountMinor())));
                payouts.add(facts);
            }
            BalanceCover cover = BalanceCover.of(all, payouts, parts);
            assertThat(cover.covers()).allMatch(one -> one.state() == Cover.State.MATCHED);
            assertThat(cover.differences()).isEqualTo(Amount.ZERO);
            Amount out = payouts.stream().map(PayoutFacts::out).collect(Amount.sum());
            assertThat(cover.openSum())
                    .as("what no payout covers is the balance")
                    .isEqualTo(Movement.sum(all).minus(out));
        }
    }

    /** The gross of each channel, worked out by the year itself, is explained to the cent. */
    @Test
    void theReportedGrossIsExplained() {
        for (int channel = 0; channel < year.channels; channel++) {
            int at = channel;
            List<InventedYear.Sold> sales =
                    year.sales.stream().filter(s -> s.channel() == at).toList();
            long paid = sales.stream().mapToLong(InventedYear.Sold::paidHere).sum();
            long later = year.payments.stream()
                    .filter(p -> p.sale().channel() == at)
                    .mapToLong(InventedYear.Later::amount)
                    .sum();
            InventedYear.Sold last = sales.get(0);
            GrossFacts facts = new GrossFacts(
                    sales.stream().mapToLong(InventedYear.Sold::price).sum(),
                    sales.stream().mapToLong(InventedYear.Sold::shipping).sum(),
                    sales.stream().mapToLong(s -> s.passed() ? 0 : s.tax()).sum(),
                    sales.stream().mapToLong(s -> s.passed() ? s.tax() : 0).sum(),
                    year.refunds.stream()
                            .filter(r -> r.sale().channel() == at)
                            .mapToLong(InventedYear.Back::amount)
                            .sum(),
                    sales.stream().mapToLong(InventedYear.Sold::fee).sum(),
                    paid,
                    0,
                    later,
                    0,
                    List.of(new GrossFacts.Paid(last.id(), last.day(), "SALE", "", last.paidHere())));
            long gross = paid + later - last.paidHere();
            assertThat(GrossBridge.of(reported(gross, false), facts).unexplained())
                    .isEqualTo(Amount.ZERO);
            assertThat(GrossBridge.of(reported(gross + facts.passedMinor(), true), facts)
                            .unexplained())
                    .isEqualTo(Amount.ZERO);
            assertThat(GrossBridge.of(reported(gross + 777, false), facts).unexplained())
                    .isEqualTo(Amount.of(777));
        }
    }

    /** One hundred payouts, each broken in one of nine ways: none is shown as adding up, and each shows by how much. */
    @Test
    void everyBrokenPayoutIsFound() {
        Random random = new Random(100);
        List<InventedYear.Out> outs =
                year.payouts.stream().filter(out -> out.covers().size() > 4).toList();
        TreeSet<String> ways = new TreeSet<>();
        for (int i = 0; i < 100; i++) {
            InventedYear.Out out = outs.get(random.nextInt(outs.size()));
            Broken broken = Broken.of(i % Broken.WAYS, out, year, random);
            ways.add(broken.way());
            assertThat(broken.cover().state()).as(broken.way()).isEqualTo(Cover.State.DIFFERENT);
            assertThat(broken.cover().difference()).as(broken.way()).isEqualTo(Amount.of(broken.off()));
            List<Movement> said =
                    broken.cover().parts().stream().map(Part::movement).toList();
            assertThat(FitSearch.of(said, out.day(), broken.cover().payout().out()))
                    .as("all of it is not proposed: " + broken.way())
                    .noneMatch(fit -> fit.movements().size() == said.size());
            if (broken.off() == 0) {
                assertThat(broken.cover().late()).as(broken.way()).hasSize(1);
            }
        }
        assertThat(ways).hasSize(Broken.WAYS);
    }

    private List<InventedYear.Out> of(int channel) {
        return year.payouts.stream().filter(out -> out.channel() == channel).toList();
    }

    private static GrossReported reported(long cents, boolean passed) {
        LocalDate from = InventedYear.FIRST;
        return new GrossReported(new UUID(8, 8), new UUID(7, 7), "", from, InventedYear.LAST, cents, passed, "", 0);
    }
}
