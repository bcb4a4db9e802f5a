package patinary.insight;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import patinary.survival.Exit;
import patinary.survival.Incidence;
import patinary.survival.Stay;

/**
 * Where things sell, and by when: of all that was offered, the share that sold through each channel (cumulative incidence by cause, by
 * Aalen and Johansen). Where a piece sold is known only once it did, so it is never taken for a group of which the speed could be told:
 * each channel is looked at beside all that was on offer. The channels add up to what sold at all; with what was taken down
 * and what is still on offer they are the whole.
 *
 * @param rows by the channel's name, what sold through none last
 * @param takenDown what ended without a sale
 * @param whole all that was offered
 */
record SoldWhere(List<Row> rows, Row takenDown, Speed whole) {

    private static final int HUNDRED = 100;

    /**
     * One way to end.
     *
     * @param name the channel; empty for a sale through none, and for what was taken down
     * @param rounds what ended so
     * @param incidence with this end as the one that counts: every other end takes a piece off offer
     */
    record Row(String name, List<Round> rounds, Incidence incidence) {

        /** How many ended so, a set once. */
        public long ended() {
            return incidence.steps().stream()
                    .mapToLong(Incidence.Step::soldCount)
                    .sum();
        }

        /** The days on which one ended so. */
        public List<Incidence.Step> steps() {
            return incidence.steps().stream()
                    .filter(step -> step.soldCount() > 0)
                    .toList();
        }
    }

    /** @param channels those of the shop, so that one through which nothing sold yet is seen too */
    static SoldWhere of(Collection<Round> all, Collection<String> channels) {
        List<Round> rounds = all.stream().sorted(Round.BY_DAYS).toList();
        Set<UUID> sets = new HashSet<>();
        List<Round> events = rounds.stream().filter(round -> round.ownEnd(sets)).toList();
        Map<String, List<Round>> sold = new TreeMap<>(Names.UNNAMED_LAST);
        channels.forEach(channel -> sold.put(channel, new ArrayList<>()));
        rounds.stream()
                .filter(SoldWhere::sold)
                .forEach(round -> sold.computeIfAbsent(round.channel(), channel -> new ArrayList<>())
                        .add(round));
        List<Row> rows = sold.entrySet().stream()
                .map(one -> row(one.getKey(), one.getValue(), events, round -> soldAt(round, one.getKey())))
                .toList();
        List<Round> withdrawn = rounds.stream().filter(SoldWhere::withdrawn).toList();
        return new SoldWhere(rows, row("", withdrawn, events, SoldWhere::withdrawn), Speed.of("", rounds, null));
    }

    /** The share of all that was offered and had ended so within some days, in whole percent; null where that is not known of all. */
    public @Nullable Integer within(Row row, int days) {
        return whole.known(days) ? (int) Math.round(row.incidence().sold(days) * HUNDRED) : null;
    }

    /** The row of that number, the one after the channels for what was taken down; null where there is none. */
    @Nullable
    Row row(@Nullable Integer number) {
        if (number == null || number < 0 || number > rows.size()) {
            return null;
        }
        return number == rows.size() ? takenDown : rows.get(number);
    }

    /** What the row of that number rests on: all rounds where there is no such row. */
    List<Round> rounds(@Nullable Integer number) {
        Row row = row(number);
        return row == null ? whole.rounds() : row.rounds();
    }

    private static Row row(String name, List<Round> own, List<Round> events, Predicate<Round> ended) {
        return new Row(
                name,
                own,
                Incidence.of(events.stream().map(round -> as(round, ended)).toList()));
    }

    /** The end looked at counts as the sale, every other end as a withdrawal: the share still on offer is the same for all of them. */
    private static Stay as(Round round, Predicate<Round> ended) {
        Stay stay = round.stay();
        Exit exit = stay.exit() == Exit.OPEN ? Exit.OPEN : ended.test(round) ? Exit.SOLD : Exit.WITHDRAWN;
        return new Stay(stay.from(), stay.days(), exit);
    }

    private static boolean sold(Round round) {
        return round.stay().exit() == Exit.SOLD;
    }

    private static boolean withdrawn(Round round) {
        return round.stay().exit() == Exit.WITHDRAWN;
    }

    private static boolean soldAt(Round round, String channel) {
        return sold(round) && round.channel().equals(channel);
    }
}
