package patinary.bench;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.supplies.SupplyCatalog;
import patinary.supplies.ToolUse;
import patinary.web.Answers;
import patinary.web.Ids;

/** Reads the supplies that were used, in her measures as they were on that day, and how each is shared over the pieces. */
final class UseReading {

    private static final int TYPED = 80;
    private static final BigDecimal LARGEST_WEIGHT = BigDecimal.valueOf(1_000_000_000L);

    private final List<BenchForm.UseLine> lines;
    private final Answers answers;
    private final Map<UUID, SupplyCatalog.Known> supplies;
    private final List<WorkedPiece> pieces;
    private final LocalDate day;
    private final List<SupplyUse> uses = new ArrayList<>();
    private final List<UsePiece> parts = new ArrayList<>();

    UseReading(
            List<BenchForm.UseLine> lines,
            Answers answers,
            Map<UUID, SupplyCatalog.Known> supplies,
            List<WorkedPiece> pieces,
            LocalDate day) {
        this.day = day;
        this.lines = lines;
        this.answers = answers;
        this.supplies = supplies;
        this.pieces = pieces;
    }

    UseReading read() {
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isEmpty()) {
                use("uses[" + i + "].", lines.get(i));
            }
        }
        return this;
    }

    /** The tools that were ticked: each was used once, on all the pieces; nothing of it can be wrong but its id. */
    UseReading ticked(List<String> tools) {
        for (String tool : tools) {
            SupplyCatalog.Known supply = Ids.read(tool).map(supplies::get).orElse(null);
            BigDecimal size = supply == null
                    ? null
                    : ToolUse.size(supply.facts())
                            .flatMap(now -> ToolUse.size(supply.measuresOn(day)))
                            .orElse(null);
            if (supply == null || size == null) {
                answers.wrong("tools", "bench.error.tool");
            } else {
                int number = uses.size() + 1;
                uses.add(SupplyUse.on(day, number, supply, ToolUse.ONCE, size, true));
                parts.addAll(Weights.equal(
                        number, pieces.stream().map(WorkedPiece::id).toList()));
            }
        }
        return this;
    }

    private static boolean isToolUsedOnce(SupplyCatalog.@Nullable Known supply, BenchForm.UseLine line) {
        return line.quantity.isBlank()
                && supply != null
                && ToolUse.size(supply.facts()).isPresent();
    }

    List<SupplyUse> uses() {
        return List.copyOf(uses);
    }

    List<UsePiece> parts() {
        return List.copyOf(parts);
    }

    private void use(String at, BenchForm.UseLine line) {
        int number = uses.size() + 1;
        UUID id = answers.id(at + "supply", line.supply, "bench.error.supply");
        SupplyCatalog.Known supply = supplies.get(id);
        String typed =
                answers.note(at + "quantity", isToolUsedOnce(supply, line) ? ToolUse.ONCE : line.quantity, TYPED);
        if (supply == null) {
            if (!line.supply.isBlank()) {
                answers.wrong(at + "supply", "bench.error.supply");
            }
        } else {
            quantity(at, typed, supply)
                    .ifPresent(quantity ->
                            uses.add(SupplyUse.on(day, number, supply, typed, quantity, !isExact(at, line.how))));
        }
        parts.addAll(parts(at, number, line));
    }

    /** Which pieces a line's supply went on, and in which proportion. */
    List<UsePiece> parts(String at, int number, BenchForm.UseLine line) {
        return answers.word(at + "share", line.share, ShareMode.class, "bench.error.share")
                .map(mode -> shares(at, number, mode, line))
                .orElse(List.of());
    }

    /** What was typed, in the base unit, above zero. */
    Optional<BigDecimal> quantity(String at, String typed, SupplyCatalog.Known supply) {
        return answers.quantity(at + "quantity", typed, supply.facts().dimension(), supply.measuresOn(day))
                .filter(quantity -> {
                    if (quantity.signum() == 0) {
                        answers.wrong(at + "quantity", "bench.error.nothing");
                    }
                    return quantity.signum() > 0;
                });
    }

    boolean isExact(String at, String how) {
        if (!how.equals("EYE") && !how.equals("EXACT")) {
            answers.wrong(at + "how", "bench.error.how");
        }
        return how.equals("EXACT");
    }

    private List<UsePiece> shares(String at, int number, ShareMode mode, BenchForm.UseLine line) {
        if (mode == ShareMode.NONE) {
            return List.of();
        }
        List<WorkedPiece> on = line.only.isEmpty()
                ? pieces
                : pieces.stream()
                        .filter(piece -> line.only.contains(piece.id().toString()))
                        .toList();
        if (on.isEmpty()) {
            answers.wrong(at + "share", "bench.error.no-pieces");
            return List.of();
        }
        return switch (mode) {
            case AREA -> byArea(at, number, on);
            case TYPED -> typed(at, number, on, line);
            default -> Weights.equal(number, on.stream().map(WorkedPiece::id).toList());
        };
    }

    private List<UsePiece> byArea(String at, int number, List<WorkedPiece> on) {
        String unknown = on.stream()
                .filter(piece -> piece.area() == null)
                .map(WorkedPiece::code)
                .reduce((one, other) -> one + ", " + other)
                .orElse("");
        if (!unknown.isEmpty()) {
            answers.wrong(at + "share", "bench.error.no-area", unknown);
            return List.of();
        }
        return Weights.byArea(
                number,
                on.stream()
                        .map(piece -> new Weights.Surface(piece.id(), piece.area()))
                        .toList());
    }

    /** A piece without a weight is one it did not go on. */
    private List<UsePiece> typed(String at, int number, List<WorkedPiece> on, BenchForm.UseLine line) {
        List<UsePiece> read = new ArrayList<>();
        boolean readable = true;
        for (int j = 0; j < line.parts.size(); j++) {
            BenchForm.Part part = line.parts.get(j);
            Optional<WorkedPiece> piece = on.stream()
                    .filter(one -> one.id().toString().equals(part.piece))
                    .findFirst();
            if (piece.isPresent() && !part.weight.isBlank()) {
                Optional<BigDecimal> weight = weight(at + "parts[" + j + "].weight", part.weight);
                readable &= weight.isPresent();
                weight.filter(value -> value.signum() > 0)
                        .ifPresent(value ->
                                read.add(new UsePiece(number, piece.get().id(), value)));
            }
        }
        if (read.isEmpty() && readable) {
            answers.wrong(at + "share", "bench.error.no-weights");
        }
        return read;
    }

    private Optional<BigDecimal> weight(String field, String text) {
        Optional<BigDecimal> weight = answers.decimal(field, text, "bench.error.weight");
        if (weight.isPresent() && (weight.get().signum() < 0 || weight.get().compareTo(LARGEST_WEIGHT) > 0)) {
            answers.wrong(field, "bench.error.weight");
            return Optional.empty();
        }
        return weight;
    }
}
