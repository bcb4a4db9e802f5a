package patinary.bench;

import java.util.List;

/**
 * How the supplies of an entry were handled before they went on the pieces.
 *
 * @param cuts how uses were cut out of sheets
 * @param pots what was mixed
 * @param potPieces which pieces each pot went on
 * @param potUses which uses are ingredients of which pot
 * @param usePots the part of each use that was put aside
 */
public record Handling(
        List<SheetCut> cuts, List<Pot> pots, List<PotPiece> potPieces, List<PotUse> potUses, List<UsePot> usePots) {

    /** Everything went straight from its container to the pieces. */
    public static final Handling PLAIN = new Handling(List.of(), List.of(), List.of(), List.of(), List.of());

    /** Whether a use was neither cut nor mixed, so that it stands on a line of its own. */
    boolean isPlain(SupplyUse use) {
        return cuts.stream().noneMatch(cut -> cut.line() == use.line())
                && potUses.stream().noneMatch(inside -> inside.line() == use.line());
    }
}
