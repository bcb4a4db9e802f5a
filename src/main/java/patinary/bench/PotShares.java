package patinary.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * Where what is in a pot went: on the pieces, into the cups poured from it and there on their pieces, and aside. Shares
 * are by volume. What was thrown away stays with the pieces of its pot: they needed the pot that was mixed.
 */
final class PotShares {

    private static final int SCALE = 14;

    private final List<Pot> pots;
    private final List<PotPiece> pieces;

    /** The millilitres of something that reached each piece and each pot put aside. */
    record Reached(Map<UUID, BigDecimal> pieces, Map<UUID, BigDecimal> aside) {}

    PotShares(List<Pot> pots, List<PotPiece> pieces) {
        this.pots = pots;
        this.pieces = pieces;
    }

    /** Where the content of a pot went, all of it together being what the pot made. */
    Reached reached(int pot) {
        Reached reached = new Reached(new LinkedHashMap<>(), new LinkedHashMap<>());
        Pot from = pot(pot);
        follow(from, from.made(), reached);
        return reached;
    }

    /** What of a pot went on its own pieces, with what was thrown away; below zero where more left it than it made. */
    BigDecimal onPieces(Pot pot) {
        return pot.made()
                .subtract(pot.kept())
                .subtract(poured(pot).stream().map(Pot::poured).reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    /** The rows that say for each ingredient of the pots where it went. */
    static Rows rows(List<Pot> pots, List<PotPiece> pieces, List<PotUse> uses) {
        PotShares shares = new PotShares(pots, pieces);
        List<UsePiece> on = new ArrayList<>();
        List<UsePot> aside = new ArrayList<>();
        for (PotUse use : uses) {
            Reached reached = shares.reached(use.pot());
            reached.pieces().forEach((piece, weight) -> on.add(new UsePiece(use.line(), piece, weight)));
            reached.aside().forEach((supply, weight) -> aside.add(new UsePot(use.line(), supply, weight)));
        }
        return new Rows(on, aside);
    }

    record Rows(List<UsePiece> pieces, List<UsePot> aside) {}

    private void follow(Pot pot, BigDecimal content, Reached reached) {
        share(pot, part(content, onPieces(pot), pot.made()), reached);
        if (pot.keptAs() != null && pot.rest().signum() > 0) {
            reached.aside().merge(pot.keptAs(), part(content, pot.rest(), pot.made()), BigDecimal::add);
        }
        poured(pot).forEach(cup -> follow(cup, part(content, cup.poured(), pot.made()), reached));
    }

    private void share(Pot pot, BigDecimal content, Reached reached) {
        List<PotPiece> on =
                pieces.stream().filter(piece -> piece.pot() == pot.number()).toList();
        BigDecimal all = on.stream().map(PotPiece::weight).reduce(BigDecimal.ZERO, BigDecimal::add);
        if (content.signum() > 0 && all.signum() > 0) {
            on.forEach(piece ->
                    reached.pieces().merge(piece.pieceId(), part(content, piece.weight(), all), BigDecimal::add));
        }
    }

    private List<Pot> poured(Pot from) {
        return pots.stream()
                .filter(cup -> cup.pouredFrom() != null && cup.pouredFrom() == from.number())
                .toList();
    }

    private Pot pot(int number) {
        return pots.stream()
                .filter(pot -> pot.number() == number)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No pot " + number));
    }

    private static BigDecimal part(BigDecimal whole, BigDecimal part, BigDecimal of) {
        return whole.multiply(part).divide(of, SCALE, RoundingMode.HALF_UP);
    }
}
