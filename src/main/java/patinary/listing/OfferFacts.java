package patinary.listing;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is known of an offer and its pieces.
 *
 * @param priceMinor what is asked today; null before the first price
 * @param pieces by code
 * @param finishes done on any of them
 * @param supplies used on any of them
 */
record OfferFacts(
        UUID id,
        String title,
        @Nullable Long priceMinor,
        List<Piece> pieces,
        List<String> finishes,
        List<Used> supplies,
        List<String> tags) {

    /**
     * A piece of the offer.
     *
     * @param size as typed, or empty
     */
    record Piece(
            UUID id,
            String code,
            String title,
            @Nullable String kind,
            @Nullable String style,
            String material,
            String size,
            @Nullable BigDecimal weightG) {}

    /** A supply that was used. */
    record Used(UUID id, UUID lineId, String name, String line) {}

    /** Everything that may call up a line of care or a caution. */
    List<String> words() {
        return Stream.of(
                        Stream.of(title),
                        pieces.stream()
                                .flatMap(piece -> Stream.of(
                                        piece.title(),
                                        piece.material(),
                                        orEmpty(piece.kind()),
                                        orEmpty(piece.style()))),
                        finishes.stream(),
                        supplies.stream().flatMap(used -> Stream.of(used.name(), used.line())))
                .flatMap(texts -> texts)
                .filter(text -> !text.isBlank())
                .toList();
    }

    /** What the pieces have of something, each once. */
    List<String> each(Function<Piece, @Nullable String> of) {
        return pieces.stream()
                .map(of)
                .filter(Objects::nonNull)
                .filter(text -> !text.isBlank())
                .distinct()
                .toList();
    }

    /** The same with the piece's title before it where there are several pieces. */
    List<String> named(Function<Piece, @Nullable String> of) {
        return pieces.stream()
                .filter(piece -> !orEmpty(of.apply(piece)).isBlank())
                .map(piece ->
                        pieces.size() == 1 ? orEmpty(of.apply(piece)) : piece.title() + ": " + orEmpty(of.apply(piece)))
                .toList();
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }
}
