package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import patinary.insight.Speed.Verdict;
import patinary.survival.Exit;
import patinary.survival.Stay;

/** Made-up shops with a known truth. */
class SpeedTableTest {

    private final List<Round> rounds = new ArrayList<>();
    private final Map<Round, String> groups = new HashMap<>();

    @Test
    void tellsAFasterAndASlowerGroup() {
        Random random = new Random(1);
        add("quick", 40, 20, random);
        add("slow", 40, 200, random);
        SpeedTable table = table();

        assertThat(table.rows()).extracting(Speed::name).containsExactly("quick", "slow");
        assertThat(table.rows()).extracting(Speed::verdict).containsExactly(Verdict.FASTER, Verdict.SLOWER);
        assertThat(table.whole().stays()).hasSize(80);
        assertThat(table.whole().verdict()).isNull();
    }

    @Test
    void saysThatFewAreTooFew() {
        Random random = new Random(2);
        add("many", 40, 60, random);
        add("few", 4, 1, random);
        add("", 30, 60, random);

        assertThat(table().rows())
                .extracting(Speed::name, Speed::verdict)
                .contains(org.assertj.core.groups.Tuple.tuple("few", Verdict.FEW))
                .last()
                .satisfies(last -> assertThat(last.toList().get(0)).isEqualTo(""));
    }

    /** Five groups that are alike, in two hundred shops: a false word about any of them in at most one of twenty, and chance. */
    @Test
    void seldomCallsAlikeGroupsDifferent() {
        int wrong = 0;
        for (int shop = 0; shop < 200; shop++) {
            rounds.clear();
            groups.clear();
            Random random = new Random(shop);
            for (String name : List.of("a", "b", "c", "d", "e")) {
                add(name, 20, 60, random);
            }
            wrong += table().rows().stream()
                            .anyMatch(row -> row.verdict() == Verdict.FASTER || row.verdict() == Verdict.SLOWER)
                    ? 1
                    : 0;
        }
        // 10 are expected at most; 20 or more would happen once in 375 times.
        assertThat(wrong).isLessThan(20);
    }

    @Test
    void doesNotGuessWhatNothingWasWatchedFor() {
        add("new", 10, 60, new Random(3));
        Speed whole = table().whole();

        assertThat(whole.soldWithin(30)).isBetween(0, 100);
        assertThat(whole.soldWithin(1000)).isNull();
        assertThat(whole.sold() + whole.withdrawn() + whole.open()).isEqualTo(10);
    }

    /**
     * Two pieces by hand, one sold on day 90: the share unsold is 1 for 90 days and a half for 90 more, 135 in all; the area after that day
     * is 45, so the variance is 45² · 1 ÷ (2 · 1) = 1,012.5, and 1.96 times its root 62.4.
     */
    @Test
    void saysHowLongAPieceStandsOnAverage() {
        Speed.MeanDays mean = new Speed.MeanDays(180, new BigDecimal("135.0"), new BigDecimal("62.4"));
        assertThat(speed(Stay.of(90, Exit.SOLD), Stay.of(180, Exit.OPEN)).meanDays())
                .isEqualTo(mean);
        assertThat(speed(Stay.of(90, Exit.SOLD), Stay.of(179, Exit.OPEN)).meanDays())
                .isNull();
    }

    /** Sold after 10 and 20 days: of such pieces all is known, (10 + 20) ÷ 2 days; of what was taken down no mean is. */
    @Test
    void whatHasAllEndedIsKnownForEver() {
        Speed sold = speed(Stay.of(10, Exit.SOLD), Stay.of(20, Exit.SOLD));
        assertThat(sold.soldWithin(180)).isEqualTo(100);
        assertThat(sold.meanDays().days()).isEqualByComparingTo("15.0");
        Speed ended = speed(Stay.of(10, Exit.SOLD), Stay.of(20, Exit.WITHDRAWN));
        assertThat(ended.soldWithin(180)).isEqualTo(50);
        assertThat(ended.meanDays()).isNull();
        assertThat(speed(Stay.of(10, Exit.SOLD), Stay.of(20, Exit.OPEN)).soldWithin(30))
                .isNull();
    }

    private static Speed speed(Stay... stays) {
        List<Round> rounds = Stream.of(stays)
                .map(stay -> new Round(UUID.randomUUID(), UUID.randomUUID(), null, LocalDate.EPOCH, stay, ""))
                .toList();
        return Speed.of("", rounds, null);
    }

    /** Three pieces by hand: two sold as a set, one stay; the third came back twice and waits again, three stays. */
    @Test
    void countsEachPieceOnce() {
        UUID set = new UUID(0, 9);
        round(new UUID(0, 1), set, 5, Exit.SOLD);
        round(new UUID(0, 2), set, 5, Exit.SOLD);
        assertThat(table().whole().stays()).hasSize(1);
        assertThat(table().whole().pieces()).isEqualTo(2);

        round(new UUID(0, 3), null, 7, Exit.OPEN);
        round(new UUID(0, 3), null, 11, Exit.OPEN);
        round(new UUID(0, 3), null, 13, Exit.OPEN);
        assertThat(table().whole().stays()).hasSize(4);
        assertThat(table().whole().pieces()).isEqualTo(3);
        assertThat(table().rows()).extracting(Speed::pieces).containsExactly(3L);
    }

    private void round(UUID piece, @Nullable UUID set, int days, Exit exit) {
        Round round = new Round(piece, piece, set, LocalDate.of(2025, 1, 1), Stay.of(days, exit), "");
        rounds.add(round);
        groups.put(round, "made up");
    }

    private SpeedTable table() {
        return SpeedTable.of(rounds, round -> List.of(groups.get(round)));
    }

    /** Days to sale are exponential, ages up to 300 days: what has not sold by then is open. */
    private void add(String name, int pieces, double mean, Random random) {
        for (int i = 0; i < pieces; i++) {
            UUID piece = new UUID(random.nextLong(), random.nextLong());
            int days = (int) Math.ceil(-Math.log(1 - random.nextDouble()) * mean);
            int age = 1 + random.nextInt(300);
            Stay stay = days <= age ? Stay.of(days, Exit.SOLD) : Stay.of(age, Exit.OPEN);
            Round round = new Round(piece, piece, null, LocalDate.of(2025, 1, 1), stay, "");
            rounds.add(round);
            groups.put(round, name);
        }
    }
}
