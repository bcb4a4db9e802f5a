package patinary.insight;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.survival.Exit;
import patinary.survival.Incidence;
import patinary.survival.Limits;
import patinary.survival.Normal;
import patinary.survival.Quantile;
import patinary.survival.RestrictedMean;
import patinary.survival.Stay;
import patinary.survival.SurvivalCurve;

/**
 * How fast one group sells.
 *
 * @param name the group; empty for the pieces that have none
 * @param rounds what it rests on
 * @param stays one for each round, or for each set
 * @param curve the share unsold if nothing were ever withdrawn
 * @param incidence the shares that did sell and were withdrawn
 * @param verdict beside the rest of the shop; null for the whole shop
 */
record Speed(
        String name,
        List<Round> rounds,
        List<Stay> stays,
        SurvivalCurve curve,
        Incidence incidence,
        @Nullable Verdict verdict) {

    private static final int HUNDRED = 100;
    /** Over so many days the mean of the days on offer is told. */
    private static final int MEAN_WITHIN = 180;

    /** What may be said of a group beside all others. */
    enum Verdict {
        FASTER,
        SLOWER,
        ALIKE,
        FEW
    }

    static Speed of(String name, List<Round> rounds, @Nullable Verdict verdict) {
        List<Stay> stays = stays(rounds);
        return new Speed(name, rounds, List.copyOf(stays), SurvivalCurve.of(stays), Incidence.of(stays), verdict);
    }

    static List<Stay> stays(List<Round> rounds) {
        return stays(rounds, new BitSet(), false);
    }

    /**
     * The stays of some rounds. A set is one event: of the pieces that ended on the same offer, one stay counts.
     *
     * @param members the places of a group's rounds among all
     * @param own whether those of the group are meant, or all others
     */
    static List<Stay> stays(List<Round> rounds, BitSet members, boolean own) {
        Set<UUID> sets = new HashSet<>();
        List<Stay> stays = new ArrayList<>(own ? members.cardinality() : rounds.size());
        for (int i = 0; i < rounds.size(); i++) {
            Round round = rounds.get(i);
            if (members.get(i) == own && round.ownEnd(sets)) {
                stays.add(round.stay());
            }
        }
        return stays;
    }

    public long sold() {
        return count(Exit.SOLD);
    }

    public long withdrawn() {
        return count(Exit.WITHDRAWN);
    }

    public long open() {
        return count(Exit.OPEN);
    }

    /** How many different pieces the rounds are of: more than stays where some were a set, fewer where one came back. */
    public long pieces() {
        return rounds.stream().map(Round::piece).distinct().count();
    }

    private long count(Exit exit) {
        return stays.stream().filter(stay -> stay.exit() == exit).count();
    }

    /** The day by which half are sold, were none withdrawn. */
    public Quantile half() {
        return curve.median(Limits.LOG_LOG);
    }

    /** The middle days and their limits as shown; null where they are not reached. */
    public @Nullable BigDecimal halfDays() {
        return Days.orNull(half().day());
    }

    public @Nullable BigDecimal halfLow() {
        return Days.orNull(half().low());
    }

    public @Nullable BigDecimal halfHigh() {
        return Days.orNull(half().high());
    }

    /**
     * The mean days on offer of the first so many, were none withdrawn (restricted mean), with what 95 of 100 such means lie within.
     *
     * @param within the first so many days
     * @param spread to either side
     */
    record MeanDays(int within, BigDecimal days, BigDecimal spread) {}

    /** Null where no piece was watched so long and some were still unsold: of the days after the last nothing is known. */
    public @Nullable MeanDays meanDays() {
        if (!watched(MEAN_WITHIN) && (open() > 0 || !curve.isAllSold())) {
            return null;
        }
        RestrictedMean mean = curve.meanWithin(MEAN_WITHIN);
        return new MeanDays(MEAN_WITHIN, tenths(mean.days()), tenths(Normal.Z * mean.standardError()));
    }

    private static BigDecimal tenths(double days) {
        return BigDecimal.valueOf(days).setScale(1, RoundingMode.HALF_UP);
    }

    /** The share sold within some days in whole percent, or null where nothing was watched so long and some were still on offer. */
    public @Nullable Integer soldWithin(int days) {
        return known(days) ? (int) Math.round(incidence.sold(days) * HUNDRED) : null;
    }

    /** Whether any was watched so long, or none is still on offer, so that what comes after is known. */
    boolean known(int days) {
        return open() == 0 || watched(days);
    }

    private boolean watched(int days) {
        return stays.stream().anyMatch(stay -> stay.days() >= days);
    }
}
