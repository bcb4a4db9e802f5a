package patinary.ledger;

import java.math.BigDecimal;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * The words of a line in which the store keeps what is derived, one after another with a space between. A word that is missing is a
 * dash, lists have commas. Only this program reads it, and it is derived again at will.
 */
final class Words {

    private static final String NONE = "-";

    private final String[] words;
    private int next;

    Words(String line) {
        words = line.split(" ");
    }

    static String line(Object... words) {
        return Arrays.stream(words).map(Object::toString).collect(Collectors.joining(" "));
    }

    /** Equal numbers are equal, however they were written. */
    static String number(BigDecimal number) {
        return number.stripTrailingZeros().toString();
    }

    static String text(@Nullable Object value) {
        return value == null ? NONE : '=' + URLEncoder.encode(value.toString(), StandardCharsets.UTF_8);
    }

    static <T> String list(List<T> items, Function<T, String> word) {
        return items.isEmpty() ? NONE : items.stream().map(word).collect(Collectors.joining(","));
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

    DocumentRef document() {
        return new DocumentRef(id(), DocumentKind.valueOf(next()), LocalDate.parse(next()));
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
