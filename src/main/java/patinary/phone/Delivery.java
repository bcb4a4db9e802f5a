package patinary.phone;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.validation.BindingResult;

/**
 * An entry that a phone delivers, as an argument of the method that takes it. The same entry may arrive any number of
 * times, also at the same time: it is carried out once, and every time the first receipt is answered.
 *
 * <pre>{@code
 * @PostMapping(headers = Delivery.KEY)
 * ResponseEntity<?> deliver(@ModelAttribute("form") StallForm form, BindingResult errors, Delivery delivery) {
 *     return delivery.once(errors, () -> {
 *         ... store, or reject into errors
 *         return new Delivery.Stored("/sales/" + id, "selling.stall.done", title);
 *     });
 * }
 * }</pre>
 */
public final class Delivery {

    /** The header that carries the entry's id, in quotation marks; tells an entry from an ordinary form. */
    public static final String KEY = "Idempotency-Key";

    /** The header with the moment the entry was made, by the phone's clock. */
    static final String CAPTURED = "X-Captured-At";

    /** The header with the version of the form that the entry was made with. */
    static final String FORM = "X-Form-Version";

    private final Deliveries deliveries;
    private final Entry entry;

    Delivery(Deliveries deliveries, Entry entry) {
        this.deliveries = deliveries;
        this.entry = entry;
    }

    /** The entry's id, which is the id of the document it records. */
    public UUID key() {
        return entry.key();
    }

    /** When the entry was made, by the phone's clock, which may be wrong; nothing where the phone did not say. */
    public Optional<Instant> capturedAt() {
        return Optional.ofNullable(entry.capturedAt());
    }

    /** The {@code data-form} of the form it was made with: an entry may wait while the program changes; 1 if unknown. */
    public int formVersion() {
        return entry.formVersion();
    }

    /**
     * Carries the entry out, unless that was done before. The work runs in one transaction with the entry's key: both are
     * stored, or neither. Nothing is stored where the work leaves an error in {@code errors}, lets the books' {@code
     * Refused} pass, or fails. An entry that was not stored may come again under its key, mended.
     *
     * @param errors what is wrong with the entry's form; where something is before the work, the work is not run
     * @param work stores the entry; null where it has told {@code errors} why not
     * @return the answer to send: 201 with a receipt, 200 with the first receipt of an entry carried out before, 422 with
     *     the problems, 409 while the same entry is being carried out
     */
    public ResponseEntity<?> once(BindingResult errors, Supplier<@Nullable Stored> work) {
        return deliveries.once(entry, errors, work);
    }

    /**
     * What became of an entry.
     *
     * @param href where it is seen
     * @param words the key of a message that tells what was stored
     * @param details what fills the gaps of the message
     */
    public record Stored(String href, String words, Object... details) {}
}
