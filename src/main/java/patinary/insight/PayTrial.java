package patinary.insight;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.shop.Aims;
import patinary.survival.Normal;

/**
 * What to pay, tried on her own past: worked out from what was known on an earlier day, and held against what the pieces offered
 * after it then did. docs/handbook/what-to-pay.md tells how.
 *
 * @param cut the earlier day
 * @param within pieces that cost no more than the advice of that day would have had it
 * @param above pieces that cost more, or were not worth buying by it
 * @param expected what the advice expected a piece to bring, the mean of all judged
 * @param brought what they brought
 * @param half half of the 95 % interval of what they brought; null of fewer than two
 */
record PayTrial(
        LocalDate cut,
        Side within,
        Side above,
        Amount expected,
        Amount brought,
        @Nullable Amount half) {

    /** Below this many judged, or this many sold before, there is no trial. */
    static final int FEWEST = WhatToPay.FEW;

    private static final BigDecimal HOUR = BigDecimal.valueOf(60);

    /**
     * One side of the advice.
     *
     * @param judged the pieces on it, each as it turned out
     */
    record Side(List<Judged> judged) {

        public int pieces() {
            return judged.size();
        }

        /** What was left of a piece after cost and her time, the mean; null of none. */
        public @Nullable Amount kept() {
            return judged.isEmpty() ? null : mean(judged.stream().map(Judged::kept));
        }

        /** How many left at least what she aims at. */
        public int reached() {
            return (int) judged.stream()
                    .filter(one -> one.kept().compareTo(one.budget().target()) >= 0)
                    .count();
        }
    }

    /**
     * A piece held against the advice.
     *
     * @param budget the advice
     * @param brought what it left of its sale, or what one brings that did not sell in time
     * @param kept that less its supplies, her time and what it was bought for
     */
    record Judged(Outcome past, Budget budget, Amount brought, Amount kept) {

        UUID piece() {
            return past.piece();
        }

        public boolean within() {
            return past.bought().compareTo(budget.spend()) <= 0;
        }
    }

    /** Nothing where the past is too short, or too few sold before or were offered after. */
    static Optional<PayTrial> of(List<Outcome> pieces, Aims aims, Amount rate, LocalDate today) {
        LocalDate last = today.minusDays(aims.horizonDays());
        Optional<LocalDate> first = pieces.stream()
                .map(Outcome::clockFrom)
                .filter(java.util.Objects::nonNull)
                .min(LocalDate::compareTo);
        if (first.isEmpty() || !first.get().isBefore(last)) {
            return Optional.empty();
        }
        LocalDate cut = first.get().plusDays(ChronoUnit.DAYS.between(first.get(), last) / 2);
        Map<PayRow.Group, Budget> advice = advice(cells(pieces, aims, cut), aims, rate);
        List<Judged> judged = pieces.stream()
                .filter(Outcome::worked)
                .filter(piece -> piece.clockFrom() != null
                        && piece.clockFrom().isAfter(cut)
                        && !piece.clockFrom().isAfter(last))
                .flatMap(piece -> judged(piece, advice, aims, rate))
                .toList();
        return judged.size() < FEWEST ? Optional.empty() : Optional.of(of(cut, judged, aims));
    }

    private static PayTrial of(LocalDate cut, List<Judged> judged, Aims aims) {
        Moments brought = Moments.of(
                judged.stream().mapToLong(one -> one.brought().minor()).toArray());
        double error = Math.sqrt(brought.scatter() / (brought.count() - 1) / brought.count());
        return new PayTrial(
                cut,
                new Side(judged.stream().filter(Judged::within).toList()),
                new Side(judged.stream().filter(one -> !one.within()).toList()),
                mean(judged.stream()
                        .map(one -> one.budget().ifSold().plus(one.budget().ifNot()))),
                mean(judged.stream().map(Judged::brought)),
                Amount.of(Math.round(Normal.Z * error)));
    }

    public int pieces() {
        return within.pieces() + above.pieces();
    }

    /** All judged, those within the advice first. */
    List<Judged> judged() {
        return Stream.of(within, above).flatMap(side -> side.judged().stream()).toList();
    }

    /** Whether what they brought lies within what chance makes of what was expected. */
    public boolean asExpected() {
        return half != null && brought.minus(expected).absolute().compareTo(half) <= 0;
    }

    /** What was known on the day, of what was on offer by then. */
    private static Map<PayRow.Group, Pool> cells(List<Outcome> pieces, Aims aims, LocalDate day) {
        List<Outcome> offered = pieces.stream()
                .filter(piece -> piece.clockFrom() != null && !piece.clockFrom().isAfter(day))
                .toList();
        return Pools.of(offered, aims.horizonDays(), day);
    }

    private static Map<PayRow.Group, Budget> advice(Map<PayRow.Group, Pool> cells, Aims aims, Amount rate) {
        Map<PayRow.Group, Budget> advice = new LinkedHashMap<>();
        if (!cells.isEmpty()) {
            for (PayRow row : WhatToPay.rows(cells, aims, rate)) {
                if (row.budget() != null) {
                    advice.put(row.group(), row.budget());
                }
            }
        }
        return advice;
    }

    /** By the advice for its kind and style, else for its kind, its style, the whole shop. */
    private static Stream<Judged> judged(Outcome piece, Map<PayRow.Group, Budget> advice, Aims aims, Amount rate) {
        PayRow.Group group = piece.group();
        return Stream.of(group, group.kindOnly(), group.styleOnly(), PayRow.Group.WHOLE)
                .map(advice::get)
                .filter(java.util.Objects::nonNull)
                .limit(1)
                .map(budget -> judged(piece, budget, aims, rate));
    }

    private static Judged judged(Outcome piece, Budget budget, Aims aims, Amount rate) {
        LocalDate sold = piece.soldOn();
        LocalDate from = piece.clockFrom();
        Amount net = piece.net();
        boolean inTime = sold != null && from != null && !sold.isAfter(from.plusDays(aims.horizonDays()));
        Amount brought = inTime && net != null ? net : aims.salvage();
        Amount work = rate.part(piece.minutes(), HOUR, RoundingMode.HALF_UP);
        return new Judged(
                piece,
                budget,
                brought,
                brought.minus(piece.supplies()).minus(work).minus(piece.bought()));
    }

    private static Amount mean(Stream<Amount> amounts) {
        List<Amount> all = amounts.toList();
        return all.stream()
                .collect(Amount.sum())
                .part(BigDecimal.ONE, BigDecimal.valueOf(all.size()), RoundingMode.HALF_UP);
    }
}
