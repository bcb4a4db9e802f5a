package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Against the plain way, which puts every day into a set. */
class StretchesTest {

    private static final LocalDate FIRST = LocalDate.of(1969, 12, 1);

    /** Two stretches, as days after the first. */
    record Both(int from, int length, int awayFrom, int awayLength) {}

    /** 1 to 9 March and 5 to 14 March, without 7 and 8 March: 1 to 6 and 9 to 14 March, twelve days. */
    @Test
    void byHand() {
        Stretches days = new Stretches();
        days.add(LocalDate.of(2025, 3, 1), LocalDate.of(2025, 3, 10));
        days.add(LocalDate.of(2025, 3, 5), LocalDate.of(2025, 3, 15));
        days.remove(LocalDate.of(2025, 3, 7), LocalDate.of(2025, 3, 9));
        days.add(LocalDate.of(2025, 3, 20), LocalDate.of(2025, 3, 19));
        List<LocalDate> ends = new ArrayList<>();
        days.each((from, until) -> ends.addAll(List.of(LocalDate.ofEpochDay(from), LocalDate.ofEpochDay(until))));
        assertThat(ends)
                .containsExactly(
                        LocalDate.of(2025, 3, 1),
                        LocalDate.of(2025, 3, 7),
                        LocalDate.of(2025, 3, 9),
                        LocalDate.of(2025, 3, 15));
        assertThat(days.days()).isEqualTo(12);
    }

    @Property
    void hasTheSameDaysAsASetOfThem(@ForAll("several") List<Both> several) {
        Stretches stretches = new Stretches();
        Set<LocalDate> added = new HashSet<>();
        Set<LocalDate> removed = new HashSet<>();
        for (Both both : several) {
            LocalDate from = FIRST.plusDays(both.from());
            LocalDate away = FIRST.plusDays(both.awayFrom());
            stretches.add(from, from.plusDays(both.length()));
            stretches.remove(away, away.plusDays(both.awayLength()));
            from.datesUntil(from.plusDays(both.length())).forEach(added::add);
            away.datesUntil(away.plusDays(both.awayLength())).forEach(removed::add);
        }
        added.removeAll(removed);
        List<LocalDate> found = new ArrayList<>();
        stretches.each((from, until) -> LocalDate.ofEpochDay(from)
                .datesUntil(LocalDate.ofEpochDay(until))
                .forEach(found::add));
        assertThat(found).doesNotHaveDuplicates().isSorted().containsExactlyInAnyOrderElementsOf(added);
        assertThat(stretches.days()).isEqualTo(added.size());
    }

    @Provide
    Arbitrary<List<Both>> several() {
        Arbitrary<Integer> day = Arbitraries.integers().between(0, 60);
        Arbitrary<Integer> length = Arbitraries.integers().between(0, 20);
        return Combinators.combine(day, length, day, length)
                .as(Both::new)
                .list()
                .ofMaxSize(8);
    }
}
