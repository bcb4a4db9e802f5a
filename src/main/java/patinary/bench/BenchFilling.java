package patinary.bench;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.supplies.ToolUse;

/** Writes a stored entry into its form. */
final class BenchFilling {

    private BenchFilling() {}

    /** @param tools the tools that may be ticked */
    static BenchForm of(UUID id, long version, BenchContent content, List<WorkedPiece> pieces, Collection<UUID> tools) {
        BenchForm form = new BenchForm();
        form.id = id.toString();
        form.version = version;
        form.day = DayChoice.OTHER.name();
        form.date = content.date().toString();
        form.minutes = content.minutes() == 0 ? "" : Integer.toString(content.minutes());
        form.finish = content.finishId() == null ? "" : content.finishId().toString();
        form.done = content.done();
        form.note = content.note();
        content.pieces().forEach(piece -> {
            form.pieces.add(piece.pieceId().toString());
            if (piece.ready()) {
                form.ready.add(piece.pieceId().toString());
            }
        });
        Map<UUID, BigDecimal> areas = new HashMap<>();
        pieces.stream().filter(piece -> piece.area() != null).forEach(piece -> areas.put(piece.id(), piece.area()));
        content.uses().stream().filter(content.handling()::isPlain).forEach(use -> {
            if (tools.contains(use.supplyId()) && isTick(use, content, form)) {
                form.tools.add(use.supplyId().toString());
            } else {
                form.uses.add(use(use, content, areas));
            }
        });
        new HandlingFilling(content, areas).fill(form.handling);
        content.mishaps().forEach(mishap -> form.mishaps.add(mishap(mishap)));
        return form;
    }

    /** Whether a tick says all of it: once, by eye, on all the pieces alike. */
    private static boolean isTick(SupplyUse use, BenchContent content, BenchForm form) {
        List<UsePiece> parts = content.usePieces().stream()
                .filter(part -> part.line() == use.line())
                .toList();
        return use.wears()
                && use.estimated()
                && use.typed().equals(ToolUse.ONCE)
                && !form.tools.contains(use.supplyId().toString())
                && parts.size() == content.pieces().size()
                && parts.stream().allMatch(part -> part.weight().compareTo(BigDecimal.ONE) == 0);
    }

    private static BenchForm.UseLine use(SupplyUse use, BenchContent content, Map<UUID, BigDecimal> areas) {
        List<UsePiece> parts = content.usePieces().stream()
                .filter(part -> part.line() == use.line())
                .toList();
        BenchForm.UseLine line = new BenchForm.UseLine();
        line.supply = use.supplyId().toString();
        line.quantity = use.typed();
        line.how = how(use);
        share(line, parts, content, areas);
        return line;
    }

    static String how(SupplyUse use) {
        return use.estimated() ? "EYE" : "EXACT";
    }

    /** Writes how something was shared over the pieces of its entry. */
    static void share(BenchForm.UseLine line, List<UsePiece> parts, BenchContent content, Map<UUID, BigDecimal> areas) {
        ShareMode mode = Weights.modeOf(parts, areas);
        line.share = mode.name();
        if (mode == ShareMode.TYPED) {
            parts.forEach(part -> line.parts.add(part(part)));
        } else if (parts.size() < content.pieces().size()) {
            parts.forEach(part -> line.only.add(part.pieceId().toString()));
        }
    }

    private static BenchForm.Part part(UsePiece stored) {
        BenchForm.Part part = new BenchForm.Part();
        part.piece = stored.pieceId().toString();
        part.weight = stored.weight().stripTrailingZeros().toPlainString();
        return part;
    }

    private static BenchForm.MishapLine mishap(Mishap mishap) {
        BenchForm.MishapLine line = new BenchForm.MishapLine();
        line.piece = text(mishap.pieceId());
        line.supply = text(mishap.supplyId());
        line.surface = mishap.surface();
        line.what = mishap.what();
        line.preparation = mishap.preparation();
        line.reworkedIn = text(mishap.reworkedIn());
        return line;
    }

    private static String text(@Nullable UUID id) {
        return id == null ? "" : id.toString();
    }
}
