package patinary.taxyear;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import patinary.ledger.DocumentKind;
import patinary.taxyear.YearRows.Posted;

/**
 * A fingerprint of postings: SHA-256 over one line for each, in canonical order (date, kind of document, permanent id, line),
 * so that the same postings give the same fingerprint on every machine and any change of one gives another. Names are
 * left out: calling a piece something else changes no figure. docs/handbook/tax-year.md gives the form of a line.
 */
final class PostingsHash {

    private static final String BETWEEN = "\u001f";

    private static final Comparator<Posted> CANONICAL = Comparator.comparing(Posted::docDate)
            .thenComparing(row -> DocumentKind.valueOf(row.kind()))
            .thenComparing(row -> row.documentId().toString())
            .thenComparing(Posted::line);

    private PostingsHash() {}

    /** The fingerprint in 64 small hexadecimal digits. */
    static String of(Collection<Posted> postings) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            postings.stream()
                    .sorted(CANONICAL)
                    .map(PostingsHash::line)
                    .forEach(line -> digest.update(line.getBytes(StandardCharsets.UTF_8)));
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException everyPlatformHasIt) {
            throw new IllegalStateException(everyPlatformHasIt);
        }
    }

    private static String line(Posted row) {
        return Stream.of(
                        row.docDate(),
                        row.kind(),
                        row.documentId(),
                        row.line(),
                        row.account(),
                        text(row.placeId()),
                        row.category(),
                        text(row.pieceId()),
                        text(row.supplyId()),
                        text(row.partyId()),
                        text(row.originId()),
                        row.estimated(),
                        row.amountMinor(),
                        plain(row.quantity()))
                .map(Object::toString)
                .collect(Collectors.joining(BETWEEN, "", "\n"));
    }

    private static String text(@Nullable Object value) {
        return value == null ? "" : value.toString();
    }

    private static String plain(BigDecimal quantity) {
        return quantity.signum() == 0 ? "0" : quantity.stripTrailingZeros().toPlainString();
    }
}
