package patinary.phone;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.dao.ConcurrencyFailureException;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Service;
import org.springframework.transaction.TransactionStatus;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.validation.BindingResult;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;

/**
 * Carries entries out, each once. Two requests with one key in this program: the second is told to come back. In two
 * programs on one database: the key is unique there, the second waits or fails and is answered by what the first stored.
 */
@Service
class Deliveries {

    private final DeliveryStore store;
    private final TransactionTemplate transaction;
    private final Refusal refusal;
    private final MessageSource messages;
    private final Turning turning;
    private final Set<Entry.Id> running = ConcurrentHashMap.newKeySet();

    Deliveries(
            DeliveryStore store,
            TransactionTemplate transaction,
            Refusal refusal,
            MessageSource messages,
            Turning turning) {
        this.store = store;
        this.transaction = transaction;
        this.refusal = refusal;
        this.messages = messages;
        this.turning = turning;
    }

    ResponseEntity<?> once(Entry entry, BindingResult errors, Supplier<Delivery.@Nullable Stored> work) {
        if (!running.add(entry.id())) {
            return turning.stillRunning(entry);
        }
        try {
            Optional<ResponseEntity<?>> earlier = earlier(entry);
            return earlier.isPresent() ? earlier.get() : first(entry, errors, work);
        } finally {
            running.remove(entry.id());
        }
    }

    private Optional<ResponseEntity<?>> earlier(Entry entry) {
        return store.find(entry)
                .flatMap(committed -> onDisk(entry))
                .map(taken -> taken.fingerprint().equals(entry.fingerprint())
                        ? ResponseEntity.ok(taken.receipt())
                        : turning.otherContent(entry));
    }

    /** Read once more as a change is made, and so forced to the disk: whoever committed it may have failed to. */
    private Optional<DeliveryStore.Taken> onDisk(Entry entry) {
        return Objects.requireNonNull(transaction.execute(status -> store.find(entry)));
    }

    private ResponseEntity<?> first(Entry entry, BindingResult errors, Supplier<Delivery.@Nullable Stored> work) {
        if (errors.hasErrors()) {
            return turning.problems(entry, errors);
        }
        try {
            Receipt receipt = stored(entry, errors, work);
            return receipt == null ? turning.problems(entry, errors) : turning.taken(receipt);
        } catch (Meanwhile meanwhile) {
            return earlier(entry).orElseGet(() -> turning.stillRunning(entry));
        } catch (Refused refused) {
            refusal.tell(errors, refused);
            return turning.problems(entry, errors);
        } catch (DataIntegrityViolationException contradiction) {
            return turning.contradiction(entry, contradiction);
        }
    }

    /** Two devices may have given the same next number to two things: the second of them tries once more. */
    private @Nullable Receipt stored(Entry entry, BindingResult errors, Supplier<Delivery.@Nullable Stored> work) {
        try {
            return transaction.execute(status -> attempt(status, entry, errors, work));
        } catch (DataIntegrityViolationException collision) {
            return transaction.execute(status -> attempt(status, entry, errors, work));
        }
    }

    private @Nullable Receipt attempt(
            TransactionStatus status, Entry entry, BindingResult errors, Supplier<Delivery.@Nullable Stored> work) {
        claim(entry);
        Delivery.Stored stored = work.get();
        if (stored == null || errors.hasErrors()) {
            status.setRollbackOnly();
            return null;
        }
        Receipt receipt = receipt(entry, stored);
        store.answered(entry, receipt);
        return receipt;
    }

    private void claim(Entry entry) {
        try {
            store.claim(entry);
        } catch (DuplicateKeyException | ConcurrencyFailureException taken) {
            throw new Meanwhile(taken);
        }
    }

    private Receipt receipt(Entry entry, Delivery.Stored stored) {
        Locale locale = LocaleContextHolder.getLocale();
        return new Receipt(entry.key(), stored.href(), messages.getMessage(stored.words(), stored.details(), locale));
    }

    /** Another program on this database holds the key, or has just stored it. */
    private static final class Meanwhile extends RuntimeException {

        private static final long serialVersionUID = 1L;

        Meanwhile(Throwable cause) {
            super(cause);
        }
    }
}
