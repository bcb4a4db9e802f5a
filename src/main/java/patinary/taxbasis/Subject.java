package patinary.taxbasis;

import java.time.LocalDate;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a difference is about: a document, a supply, a piece, or a buyer for whom money is held.
 *
 * @param kind the kind of document, or SUPPLY, PIECE, BUYER
 * @param key tells it from others of its kind: the id, or the buyer's name in small letters
 * @param day the document's day, or null where it is no document
 * @param text what a person knows it by; may be empty
 */
public record Subject(String kind, String key, @Nullable LocalDate day, String text) {

    static Subject document(String kind, UUID id, LocalDate day, String text) {
        return new Subject(kind, id.toString(), day, text);
    }

    static Subject thing(String kind, UUID id, String text) {
        return new Subject(kind, id.toString(), null, text);
    }

    static Subject buyer(String name) {
        return new Subject("BUYER", name.strip().toLowerCase(Locale.ROOT), null, name.strip());
    }

    /** Where it can be looked at; empty where there is no page of its own. */
    public String link() {
        return switch (kind) {
            case "SALE" -> "/sales/" + key;
            case "RECEIPT" -> "/receipts/" + key;
            case "SUPPLY" -> "/supplies/" + key;
            case "PIECE" -> "/pieces/" + key;
            case "OPENING" -> "/opening";
            case "BUYER" -> "/arrangements/credit";
            default -> "";
        };
    }

    /** The message that names its kind. */
    public String kindKey() {
        return "taxbasis.kind." + kind.toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
