package patinary.bench;

import java.util.Collection;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import patinary.supplies.SupplyCatalog;

/** The words of an entry that may call up a caution. */
final class CautionTexts {

    private CautionTexts() {}

    static List<String> of(BenchContent entry, List<WorkedPiece> pieces, List<SupplyCatalog.Known> supplies) {
        Stream<String> said = Stream.concat(
                Stream.of(entry.done(), entry.note()),
                entry.mishaps().stream().flatMap(mishap -> Stream.of(mishap.surface(), mishap.what())));
        List<UUID> used = entry.uses().stream().map(SupplyUse::supplyId).toList();
        return Stream.of(said, pieces(pieces), supplies(supplies, used))
                .flatMap(texts -> texts)
                .toList();
    }

    static List<String> of(BenchForm form, List<WorkedPiece> pieces, List<SupplyCatalog.Known> supplies) {
        Stream<String> said = Stream.concat(
                Stream.of(form.done, form.note),
                form.mishaps.stream().flatMap(mishap -> Stream.of(mishap.surface, mishap.what)));
        List<UUID> used = ChosenIds.read(Stream.concat(form.uses.stream().map(use -> use.supply), form.tools.stream())
                .toList());
        return Stream.of(said, pieces(pieces), supplies(supplies, used))
                .flatMap(texts -> texts)
                .toList();
    }

    private static Stream<String> pieces(List<WorkedPiece> pieces) {
        return pieces.stream()
                .flatMap(piece -> Stream.of(piece.title(), piece.material(), piece.kind() == null ? "" : piece.kind()));
    }

    private static Stream<String> supplies(List<SupplyCatalog.Known> supplies, Collection<UUID> used) {
        return supplies.stream()
                .filter(supply -> used.contains(supply.id()))
                .flatMap(
                        supply -> Stream.of(supply.facts().name(), supply.line().name()));
    }
}
