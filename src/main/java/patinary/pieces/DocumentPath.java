package patinary.pieces;

import java.util.UUID;

/** Where the documents that name a piece are shown. */
final class DocumentPath {

    private DocumentPath() {}

    /** The path of a document of that kind; the list of pieces where a kind has no page. */
    static String of(String kind, UUID id) {
        return switch (kind) {
            case "OPENING" -> "/opening";
            case "RECEIPT" -> "/receipts/" + id;
            case "BENCH_ENTRY" -> "/bench/" + id;
            case "COUNT" -> "/supplies/counts/" + id;
            case "OFFER" -> "/offers/" + id;
            case "SALE" -> "/sales/" + id;
            case "TRIP" -> "/trips/" + id;
            case "REGROUPING" -> "/pieces/regroupings/" + id;
            default -> "/pieces";
        };
    }
}
