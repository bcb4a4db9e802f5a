package patinary.pieces;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One component of landed cost and where it came from.
 *
 * @param documentId the document that brought it
 * @param kind that document's kind
 * @param date its day
 * @param supply the supply, where it is one
 * @param originId the bench entry it belongs to, where a receipt or a count brought it later
 * @param title the line of the receipt it was bought on
 * @param estimated whether it rests on a remembered price or a quantity judged by eye
 * @param minor the amount in minor units; below zero where cost moved on
 */
record CostLine(
        UUID documentId,
        String kind,
        LocalDate date,
        @Nullable String supply,
        @Nullable UUID originId,
        @Nullable String title,
        boolean estimated,
        long minor) {

    /** What it is, as the end of a message key. */
    public String what() {
        if (supply != null) {
            return switch (kind) {
                case "COUNT" -> "count";
                case "BENCH_ENTRY" -> "used";
                default -> originId == null ? "supply" : "used-later";
            };
        }
        return switch (kind) {
            case "RECEIPT" -> "bought";
            case "OPENING" -> "opening";
            case "SALE", "REFUND" -> "owner";
            default -> minor < 0 ? "moved-on" : "joined";
        };
    }

    /** What to read as its name: the supply, else the receipt's line, else nothing. */
    public String name() {
        if (supply != null) {
            return supply;
        }
        return title == null ? "" : title;
    }

    /** Where the work it belongs to is shown, or else the document that brought it. */
    public String path() {
        boolean byCount = kind.equals("COUNT");
        return originId == null || byCount
                ? DocumentPath.of(kind, documentId)
                : DocumentPath.of("BENCH_ENTRY", originId);
    }
}
