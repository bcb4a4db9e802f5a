package patinary.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import patinary.measure.Dimension;
import patinary.supplies.SupplyCatalog;
import patinary.web.Answers;

/** Reads what was mixed: each ingredient is a use of the entry, shared by where its pot went. */
final class PotReading {

    private static final int NAME = 60;
    private static final int TYPED = 80;

    private final Answers answers;
    private final Map<UUID, SupplyCatalog.Known> supplies;
    private final Map<UUID, LocalDate> useBys;
    private final UseReading shares;
    private final LocalDate day;
    private final List<SupplyUse> uses = new ArrayList<>();
    private final List<Pot> pots = new ArrayList<>();
    private final List<PotPiece> pieces = new ArrayList<>();
    private final List<PotUse> inside = new ArrayList<>();

    /** The number of each line's pot; null where the line is empty or could not be read. */
    private final List<@Nullable Integer> numbers = new ArrayList<>();

    /** @param useBys by when pots kept earlier are to be used */
    PotReading(
            Answers answers,
            Map<UUID, SupplyCatalog.Known> supplies,
            Map<UUID, LocalDate> useBys,
            UseReading shares,
            LocalDate day) {
        this.answers = answers;
        this.supplies = supplies;
        this.useBys = useBys;
        this.shares = shares;
        this.day = day;
    }

    /** @param before how many uses the entry has already */
    PotReading read(List<HandlingForm.PotLine> lines, int before) {
        for (int i = 0; i < lines.size(); i++) {
            HandlingForm.PotLine line = lines.get(i);
            numbers.add(
                    line.isEmpty()
                            ? null
                            : pot("handling.pots[" + i + "].", line, before).orElse(null));
        }
        for (int i = 0; i < lines.size(); i++) {
            Integer number = numbers.get(i);
            if (number != null) {
                pieces("handling.pots[" + i + "].", pots.get(number - 1), lines.get(i));
            }
        }
        return this;
    }

    List<SupplyUse> uses() {
        return uses;
    }

    /** Where each ingredient went; empty where something could not be read. */
    List<UsePiece> parts() {
        return rows().pieces();
    }

    Handling handling(List<SheetCut> cuts) {
        return new Handling(cuts, pots, pieces, inside, rows().aside());
    }

    private PotShares.Rows rows() {
        return answers.anyWrong() ? new PotShares.Rows(List.of(), List.of()) : PotShares.rows(pots, pieces, inside);
    }

    private Optional<Integer> pot(String at, HandlingForm.PotLine line, int before) {
        int number = pots.size() + 1;
        Integer from = from(at, line);
        BigDecimal poured = volume(at + "poured", line.poured);
        if ((from == null) != (poured.signum() == 0)) {
            answers.wrong(at + "poured", from == null ? "bench.error.pot-from" : "bench.error.pot-poured");
        }
        int first = uses.size();
        inside(at, line, number, before);
        List<SupplyUse> in = List.copyOf(uses.subList(first, uses.size()));
        if (in.isEmpty() && from == null) {
            answers.wrong(at + "inside[0].supply", "bench.error.pot-empty");
        }
        BigDecimal water = volume(at + "water", line.water);
        Optional<BigDecimal> made = made(at, line, in, water.add(poured));
        String name = answers.note(at + "name", line.name, NAME);
        made.ifPresent(all -> {
            BigDecimal rest = rest(at, line, all);
            UUID keptAs = keptAs(at, line, rest);
            LocalDate useBy = keptAs == null ? null : useBy(at, line, in);
            pots.add(new Pot(number, name, from, poured, water, all, rest, keptAs, useBy));
        });
        return made.map(all -> number);
    }

    private @Nullable Integer from(String at, HandlingForm.PotLine line) {
        if (line.from.isBlank()) {
            return null;
        }
        Integer number = line.from.matches("[0-9]{1,4}") && Integer.parseInt(line.from) <= numbers.size()
                ? numbers.get(Integer.parseInt(line.from) - 1)
                : null;
        if (number == null) {
            answers.wrong(at + "from", "bench.error.pot-from");
        }
        return number;
    }

    private void inside(String at, HandlingForm.PotLine line, int pot, int before) {
        for (int j = 0; j < line.inside.size(); j++) {
            HandlingForm.Inside typed = line.inside.get(j);
            if (!typed.isEmpty()) {
                String field = at + "inside[" + j + "].";
                UUID id = answers.id(field + "supply", typed.supply, "bench.error.supply");
                String words = answers.note(field + "quantity", typed.quantity, TYPED);
                Optional.ofNullable(supplies.get(id))
                        .ifPresent(supply -> shares.quantity(field, words, supply)
                                .ifPresent(quantity -> {
                                    int number = before + uses.size() + 1;
                                    uses.add(SupplyUse.on(
                                            day, number, supply, words, quantity, !shares.isExact(field, typed.how)));
                                    inside.add(new PotUse(number, pot));
                                }));
                if (!supplies.containsKey(id) && !typed.supply.isBlank()) {
                    answers.wrong(field + "supply", "bench.error.supply");
                }
            }
        }
    }

    /** What was typed, else all volumes together where everything is known by volume. */
    private Optional<BigDecimal> made(String at, HandlingForm.PotLine line, List<SupplyUse> in, BigDecimal liquid) {
        if (!line.made.isBlank()) {
            BigDecimal made = volume(at + "made", line.made);
            if (made.signum() == 0) {
                answers.wrong(at + "made", "bench.error.nothing");
            }
            return Optional.of(made).filter(all -> all.signum() > 0);
        }
        boolean byVolume = in.stream()
                .allMatch(use -> Objects.requireNonNull(supplies.get(use.supplyId()))
                                .facts()
                                .dimension()
                        == Dimension.VOLUME);
        if (!byVolume) {
            answers.wrong(at + "made", "bench.error.pot-made");
            return Optional.empty();
        }
        return Optional.of(in.stream().map(SupplyUse::quantity).reduce(liquid, BigDecimal::add))
                .filter(all -> all.signum() > 0);
    }

    private BigDecimal rest(String at, HandlingForm.PotLine line, BigDecimal made) {
        BigDecimal rest =
                Fraction.read(line.rest).map(part -> part.of(made)).orElseGet(() -> volume(at + "rest", line.rest));
        if (rest.compareTo(made) > 0) {
            answers.wrong(at + "rest", "bench.error.pot-rest");
            return BigDecimal.ZERO;
        }
        return rest;
    }

    private @Nullable UUID keptAs(String at, HandlingForm.PotLine line, BigDecimal rest) {
        Optional<HandlingForm.Then> then =
                answers.word(at + "then", line.then, HandlingForm.Then.class, "bench.error.pot-then");
        if (then.isEmpty() || then.get() == HandlingForm.Then.THROWN) {
            return null;
        }
        if (rest.signum() == 0) {
            answers.wrong(at + "rest", "bench.error.pot-nothing-kept");
            return null;
        }
        return answers.id(at + "keptAs", line.keptAs, "bench.error.form-id");
    }

    /** What was typed; else the earliest day that a label or an older pot in it says. */
    private @Nullable LocalDate useBy(String at, HandlingForm.PotLine line, List<SupplyUse> in) {
        return answers.optionalDate(at + "useBy", line.useBy)
                .or(() -> in.stream().flatMap(this::keeps).min(Comparator.naturalOrder()))
                .orElse(null);
    }

    private Stream<LocalDate> keeps(SupplyUse use) {
        Integer days = Objects.requireNonNull(supplies.get(use.supplyId()))
                .facts()
                .limits()
                .daysMixed();
        return Stream.concat(Stream.ofNullable(days).map(day::plusDays), Stream.ofNullable(useBys.get(use.supplyId())));
    }

    private void pieces(String at, Pot pot, HandlingForm.PotLine line) {
        BigDecimal on = new PotShares(pots, List.of()).onPieces(pot);
        BigDecimal thrown = pot.keptAs() == null ? pot.rest() : BigDecimal.ZERO;
        if (on.subtract(thrown).signum() < 0) {
            answers.wrong(at + "rest", "bench.error.pot-too-much");
        } else if (on.signum() > 0) {
            List<UsePiece> went = shares.parts(at, pot.number(), line);
            if (line.share.equals(ShareMode.NONE.name())) {
                answers.wrong(at + "share", "bench.error.pot-no-pieces");
            }
            went.forEach(part -> pieces.add(new PotPiece(pot.number(), part.pieceId(), part.weight())));
        }
    }

    private BigDecimal volume(String field, String text) {
        return text.isBlank()
                ? BigDecimal.ZERO
                : answers.quantity(field, text, Dimension.VOLUME, List.of())
                        .orElse(BigDecimal.ZERO)
                        .setScale(14, RoundingMode.HALF_UP);
    }
}
