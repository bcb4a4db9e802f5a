package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import patinary.survival.Exit;
import patinary.survival.Stay;

/** docs/handbook/days-to-sell.md; pieces are invented. */
class SoldWhereTest {

    /**
     * By hand: of eight, one sells at the stall on day 10, one in the web shop on day 20, one is taken down on day 30, one sells at the
     * stall on day 40, and four wait, one of them since 35 days. The stall 1/8 + 5/8 · 1/4, the web shop 7/8 · 1/7, taken down 6/8 · 1/6.
     */
    @Test
    void eachEndHasItsShareOfAll() {
        SoldWhere where = SoldWhere.of(
                List.of(
                        round(10, Exit.SOLD, "Stall"),
                        round(20, Exit.SOLD, "Web shop"),
                        round(30, Exit.WITHDRAWN, ""),
                        round(35, Exit.OPEN, ""),
                        round(40, Exit.SOLD, "Stall"),
                        round(100, Exit.OPEN, ""),
                        round(100, Exit.OPEN, ""),
                        round(100, Exit.OPEN, "")),
                List.of("Fair", "Stall"));
        assertThat(where.rows()).extracting(SoldWhere.Row::name).containsExactly("Fair", "Stall", "Web shop");
        assertThat(where.within(where.rows().get(0), 90))
                .as("nothing sold there yet")
                .isZero();
        SoldWhere.Row stall = where.rows().get(1);
        SoldWhere.Row webShop = where.rows().get(2);
        assertThat(stall.ended()).isEqualTo(2);
        assertThat(stall.incidence().sold(39)).isCloseTo(1.0 / 8, within(1e-12));
        assertThat(stall.incidence().sold(40)).isCloseTo(1.0 / 8 + 5.0 / 8 / 4, within(1e-12));
        assertThat(webShop.incidence().sold(90)).isCloseTo(1.0 / 8, within(1e-12));
        assertThat(where.takenDown().incidence().sold(90)).isCloseTo(1.0 / 8, within(1e-12));
        assertThat(where.within(stall, 90)).isEqualTo(28);
        assertThat(where.within(stall, 180)).as("nothing was on offer so long").isNull();
        assertThat(where.whole().soldWithin(90)).isEqualTo(41);
    }

    /** Sold at the stall as a set of two, both pieces stand behind one end; what sold through no channel comes last. */
    @Test
    void aSetIsOneEndAndNoChannelComesLast() {
        UUID set = new UUID(7, 7);
        Round lid = round(5, Exit.SOLD, "Stall", set);
        Round pot = round(5, Exit.SOLD, "Stall", set);
        SoldWhere where = SoldWhere.of(List.of(round(3, Exit.SOLD, ""), lid, pot), List.of());
        assertThat(where.rows()).extracting(SoldWhere.Row::name).containsExactly("Stall", "");
        assertThat(where.row(0).ended()).isEqualTo(1);
        assertThat(where.rounds(0)).containsExactly(lid, pot);
        assertThat(where.row(2)).isSameAs(where.takenDown());
        assertThat(where.row(3)).isNull();
        assertThat(where.rounds(3)).hasSize(3);
    }

    /** Every day the channels add up to what sold at all, and with what was taken down and is still on offer to all. */
    @Property(tries = 200)
    void theEndsMakeUpAll(@ForAll @Size(min = 1, max = 60) List<@IntRange(max = 599) Integer> drawn) {
        List<Round> rounds = new ArrayList<>();
        for (int one : drawn) {
            int way = one % 6;
            Exit exit = way == 0 ? Exit.OPEN : way == 1 ? Exit.WITHDRAWN : Exit.SOLD;
            rounds.add(round(one / 6, exit, exit == Exit.SOLD ? "Channel " + way : ""));
        }
        SoldWhere where = SoldWhere.of(rounds, List.of("Channel 2"));
        where.whole().incidence().steps().forEach(step -> {
            double sold = where.rows().stream()
                    .mapToDouble(row -> row.incidence().sold(step.day()))
                    .sum();
            assertThat(sold).isCloseTo(step.sold(), within(1e-9));
            assertThat(where.takenDown().incidence().sold(step.day())).isCloseTo(step.withdrawn(), within(1e-9));
        });
        assertThat(where.rows().stream().mapToLong(SoldWhere.Row::ended).sum())
                .isEqualTo(where.whole().sold());
    }

    private static Round round(int days, Exit exit, String channel) {
        return round(days, exit, channel, null);
    }

    private static Round round(int days, Exit exit, String channel, @Nullable UUID set) {
        UUID piece = UUID.randomUUID();
        return new Round(piece, piece, set, LocalDate.of(2025, 1, 1), Stay.of(days, exit), channel);
    }
}
