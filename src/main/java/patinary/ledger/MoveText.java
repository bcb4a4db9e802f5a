package patinary.ledger;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import patinary.ledger.Move.Destination;

/** Moves of strands as {@link Words}, in which the store keeps them; the first says what it is. */
final class MoveText {

    private MoveText() {}

    static String of(Move move) {
        if (move instanceof Move.SupplyIn in) {
            return Words.line(
                    "in",
                    in.supply(),
                    in.place(),
                    Words.number(in.quantity()),
                    in.cost().minor(),
                    in.estimated());
        } else if (move instanceof Move.SupplyOut out) {
            return Words.line(
                            "out",
                            out.supply(),
                            out.place(),
                            Words.number(out.quantity()),
                            out.estimated(),
                            out.wears())
                    + ' '
                    + to(out.to());
        } else if (move instanceof Move.SupplyBack back) {
            return Words.line("back", back.supply(), back.place(), Words.number(back.quantity()), back.sale());
        } else if (move instanceof Move.Mixed mixed) {
            return Words.line("mixed", mixed.pot(), Words.number(mixed.quantity()));
        } else if (move instanceof Move.Counted counted) {
            return Words.line(
                    "counted", counted.supply(), counted.place(), Words.number(counted.quantity()), counted.waste());
        }
        return ofOthers(move);
    }

    private static String ofOthers(Move move) {
        if (move instanceof Move.PieceIn in) {
            return Words.line("piece-in", in.piece(), in.cost().minor(), in.estimated());
        } else if (move instanceof Move.PieceOut out) {
            return Words.line("piece-out", out.piece(), out.to(), Words.text(out.category()));
        } else if (move instanceof Move.PieceBack back) {
            return Words.line("piece-back", back.piece(), back.sale());
        } else if (move instanceof Move.Regroup regroup) {
            return Words.line("regroup", Words.list(regroup.from(), UUID::toString), pieces(regroup.to()));
        } else if (move instanceof Move.MoneyCounted counted) {
            return Words.line("money", counted.place(), counted.amount().minor());
        }
        throw new IllegalArgumentException("No move of a strand: " + move);
    }

    private static String to(Destination to) {
        if (to instanceof Destination.Pieces on) {
            return Words.line("pieces", pieces(on.shares()));
        } else if (to instanceof Destination.Mix mix) {
            return Words.line(
                    "mix",
                    pieces(mix.pieces()),
                    Words.list(mix.pots(), share -> share.pot() + "*" + Words.number(share.weight())));
        } else if (to instanceof Destination.Place other) {
            return Words.line("place", other.place());
        }
        Destination.To out = (Destination.To) to;
        Tags tags = out.tags();
        return Words.line(
                "to",
                out.account(),
                Words.text(tags.place()),
                Words.text(tags.category()),
                Words.text(tags.piece()),
                Words.text(tags.supply()),
                Words.text(tags.party()),
                Words.text(tags.origin()),
                tags.estimated());
    }

    static Move read(String line) {
        return read(new Words(line));
    }

    static Move read(Words words) {
        String kind = words.next();
        return switch (kind) {
            case "in" -> new Move.SupplyIn(words.id(), words.place(), words.number(), words.amount(), words.yes());
            case "out" -> out(words);
            case "back" -> new Move.SupplyBack(words.id(), words.place(), words.number(), words.id());
            case "mixed" -> new Move.Mixed(words.id(), words.number());
            case "counted" -> new Move.Counted(words.id(), words.place(), words.number(), words.yes());
            case "piece-in" -> new Move.PieceIn(words.id(), words.amount(), words.yes());
            case "piece-out" -> new Move.PieceOut(words.id(), words.account(), words.text());
            case "piece-back" -> new Move.PieceBack(words.id(), words.id());
            case "regroup" -> new Move.Regroup(words.list(UUID::fromString), words.pieces());
            case "money" -> new Move.MoneyCounted(words.id(), words.amount());
            default -> throw new IllegalArgumentException("Not a move: " + kind);
        };
    }

    private static Move out(Words words) {
        UUID supply = words.id();
        StockPlace place = words.place();
        BigDecimal quantity = words.number();
        boolean estimated = words.yes();
        boolean wears = words.yes();
        return new Move.SupplyOut(supply, place, quantity, estimated, destination(words), wears);
    }

    private static Destination destination(Words words) {
        String kind = words.next();
        return switch (kind) {
            case "pieces" -> new Destination.Pieces(words.pieces());
            case "mix" -> new Destination.Mix(words.pieces(), words.pots());
            case "place" -> new Destination.Place(words.place());
            case "to" -> new Destination.To(words.account(), words.tags());
            default -> throw new IllegalArgumentException("Not a destination: " + kind);
        };
    }

    private static String pieces(List<PieceShare> shares) {
        return Words.list(shares, share -> share.piece() + "*" + Words.number(share.weight()));
    }
}
