package patinary.asking;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.selling.FeeRule;
import patinary.selling.UsualTerms;

/** Worked by hand. The channel is invented: a rent of 40.00 from February, 45.00 from June, none from September. */
class ChargesDueTest {

    private static final UUID CHANNEL = UUID.randomUUID();

    private static final ChannelRules.Known HALL = new ChannelRules.Known(
            CHANNEL,
            "Craft hall",
            UUID.randomUUID(),
            List.of(
                    rule(LocalDate.of(2025, 2, 1), 20L, 4000L),
                    rule(LocalDate.of(2025, 5, 15), 30L, 4500L),
                    rule(LocalDate.of(2025, 9, 1), null, null)),
            new UsualTerms(Amount.ZERO, Amount.ZERO, Percent.ZERO, false));

    /** The books begin on 10 March: March began before. The rule of 15 May holds from the first of June on. */
    @Test
    void everyWholeMonthByTheRuleOfItsFirst() {
        List<Charge> due = ChargesDue.ofMonths(
                HALL, LocalDate.of(2025, 3, 10), LocalDate.of(2025, 12, 31), Set.of(LocalDate.of(2025, 7, 1)));
        assertThat(due)
                .extracting(Charge::month)
                .containsExactly(
                        LocalDate.of(2025, 4, 1),
                        LocalDate.of(2025, 5, 1),
                        LocalDate.of(2025, 6, 1),
                        LocalDate.of(2025, 8, 1));
        assertThat(due).extracting(charge -> charge.amount().minor()).containsExactly(4000L, 4000L, 4500L, 4500L);
        assertThat(due).allMatch(charge -> charge.category().equals("booth_rent"));
    }

    @Test
    void theBooksMayBeginOnAFirst() {
        assertThat(ChargesDue.ofMonths(HALL, LocalDate.of(2025, 3, 1), LocalDate.of(2025, 3, 1), Set.of()))
                .extracting(Charge::month)
                .containsExactly(LocalDate.of(2025, 3, 1));
    }

    @Test
    void anOfferByTheRuleOfItsFirstDay() {
        List<Charge> due = ChargesDue.ofOffers(
                HALL,
                List.of(
                        listed(LocalDate.of(2025, 1, 31), CHANNEL),
                        listed(LocalDate.of(2025, 5, 14), CHANNEL),
                        listed(LocalDate.of(2025, 5, 15), CHANNEL),
                        listed(LocalDate.of(2025, 5, 16), UUID.randomUUID()),
                        listed(LocalDate.of(2025, 9, 1), CHANNEL)));
        assertThat(due).extracting(charge -> charge.amount().minor()).containsExactly(20L, 30L);
        assertThat(due).allMatch(charge -> charge.category().equals("channel_fees"));
    }

    private static ChargesDue.Listed listed(LocalDate day, UUID channel) {
        return new ChargesDue.Listed(UUID.randomUUID(), "Tray", day, channel);
    }

    private static FeeRule rule(LocalDate from, @Nullable Long perOffer, @Nullable Long perMonth) {
        return new FeeRule(
                from,
                Percent.ZERO,
                Amount.ZERO,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                perOffer == null ? null : Amount.of(perOffer),
                perMonth == null ? null : Amount.of(perMonth));
    }
}
