package patinary.ledger;

import java.math.BigDecimal;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import patinary.ledger.Move.Destination;
import patinary.money.Amount;

/**
 * Moves of strands as lines of text, in which the store keeps them: words with a space between, the first of which says what it
 * is. A word that is missing is a dash, lists have commas. Only this program reads it, and it is derived again at will.
 */
final class MoveText {

    private static final String NONE = "-";

    private MoveText() {}

    static String of(Move move) {
        if (move instanceof Move.SupplyIn in) {
            return words(
                    "in",
                    in.supply(),
                    in.place(),
                    number(in.quantity()),
                    in.cost().minor(),
                    in.estimated());
        } else if (move instanceof Move.SupplyOut out) {
            return words("out", out.supply(), out.place(), number(out.quantity()), out.estimated(), out.wears())
                    + ' '
                    + to(out.to());
        } else if (move instanceof Move.SupplyBack back) {
            return words("back", back.supply(), back.place(), number(back.quantity()), back.sale());
        } else if (move instanceof Move.Mixed mixed) {
            return words("mixed", mixed.pot(), number(mixed.quantity()));
        } else if (move instanceof Move.Counted counted) {
            return words("counted", counted.supply(), counted.place(), number(counted.quantity()), counted.waste());
        }
        return ofOthers(move);
    }

    private static String ofOthers(Move move) {
        if (move instanceof Move.PieceIn in) {
            return words("piece-in", in.piece(), in.cost().minor(), in.estimated());
        } else if (move instanceof Move.PieceOut out) {
            return words("piece-out", out.piece(), out.to(), text(out.category()));
        } else if (move instanceof Move.PieceBack back) {
            return words("piece-back", back.piece(), back.sale());
        } else if (move instanceof Move.Regroup regroup) {
            return words("regroup", list(regroup.from(), UUID::toString), pieces(regroup.to()));
        } else if (move instanceof Move.MoneyCounted counted) {
            return words("money", counted.place(), counted.amount().minor());
        }
        throw new IllegalArgumentException("No move of a strand: " + move);
    }

    private static String to(Destination to) {
        if (to instanceof Destination.Pieces on) {
            return words("pieces", pieces(on.shares()));
        } else if (to instanceof Destination.Mix mix) {
            return words(
                    "mix", pieces(mix.pieces()), list(mix.pots(), share -> share.pot() + "*" + number(share.weight())));
        } else if (to instanceof Destination.Place other) {
            return words("place", other.place());
        }
        Destination.To out = (Destination.To) to;
        Tags tags = out.tags();
        return words(
                "to",
                out.account(),
                text(tags.place()),
                text(tags.category()),
                text(tags.piece()),
                text(tags.supply()),
                text(tags.party()),
                text(tags.origin()),
                tags.estimated());
    }

    static Move read(String line) {
        Words words = new Words(line);
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
            default -> throw new IllegalArgumentException("Not a move: " + line);
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

    private static String words(Object... words) {
        return Arrays.stream(words).map(Object::toString).collect(Collectors.joining(" "));
    }

    private static String number(BigDecimal number) {
        return number.stripTrailingZeros().toString();
    }

    private static String text(@Nullable Object value) {
        return value == null ? NONE : '=' + URLEncoder.encode(value.toString(), StandardCharsets.UTF_8);
    }

    private static String pieces(List<PieceShare> shares) {
        return list(shares, share -> share.piece() + "*" + number(share.weight()));
    }

    private static <T> String list(List<T> items, Function<T, String> word) {
        return items.isEmpty() ? NONE : items.stream().map(word).collect(Collectors.joining(","));
    }

    /** The words of a line, one after another. */
    private static final class Words {

        private final String[] words;
        private int next;

        Words(String line) {
            words = line.split(" ");
        }

        String next() {
            return words[next++];
        }

        UUID id() {
            return UUID.fromString(next());
        }

        StockPlace place() {
            return StockPlace.valueOf(next());
        }

        Account account() {
            return Account.valueOf(next());
        }

        BigDecimal number() {
            return new BigDecimal(next());
        }

        Amount amount() {
            return Amount.of(Long.parseLong(next()));
        }

        boolean yes() {
            return Boolean.parseBoolean(next());
        }

        @Nullable
        String text() {
            String word = next();
            return word.equals(NONE) ? null : URLDecoder.decode(word.substring(1), StandardCharsets.UTF_8);
        }

        @Nullable
        UUID optionalId() {
            String word = text();
            return word == null ? null : UUID.fromString(word);
        }

        Tags tags() {
            return new Tags(optionalId(), text(), optionalId(), optionalId(), optionalId(), optionalId(), yes());
        }

        <T> List<T> list(Function<String, T> item) {
            String word = next();
            return word.equals(NONE)
                    ? List.of()
                    : Arrays.stream(word.split(",")).map(item).toList();
        }

        List<PieceShare> pieces() {
            return list(word -> new PieceShare(id(word), weight(word)));
        }

        List<PotShare> pots() {
            return list(word -> new PotShare(id(word), weight(word)));
        }

        private static UUID id(String share) {
            return UUID.fromString(share.substring(0, 36));
        }

        private static BigDecimal weight(String share) {
            return new BigDecimal(share.substring(37));
        }
    }
}
