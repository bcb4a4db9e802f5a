package patinary.phone;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.MessageSource;
import org.springframework.context.MessageSourceResolvable;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;
import org.springframework.validation.BindingResult;
import org.springframework.validation.FieldError;
import org.springframework.validation.ObjectError;

/** The answers to a delivery, always JSON. */
@Component
class Turning {

    private static final Logger LOG = LoggerFactory.getLogger(Turning.class);

    private final MessageSource messages;

    Turning(MessageSource messages) {
        this.messages = messages;
    }

    ResponseEntity<?> taken(Receipt receipt) {
        return ResponseEntity.status(HttpStatus.CREATED)
                .header(HttpHeaders.LOCATION, receipt.href())
                .contentType(MediaType.APPLICATION_JSON)
                .body(receipt);
    }

    ResponseEntity<?> problems(Entry entry, BindingResult errors) {
        List<Turned.Reason> reasons =
                errors.getAllErrors().stream().map(this::reason).toList();
        return answer(HttpStatus.UNPROCESSABLE_CONTENT, new Turned(entry.key(), false, reasons));
    }

    ResponseEntity<?> otherContent(Entry entry) {
        return about(HttpStatus.UNPROCESSABLE_CONTENT, entry.key(), false, "phone.turned.other-content");
    }

    ResponseEntity<?> stillRunning(Entry entry) {
        return about(HttpStatus.CONFLICT, entry.key(), true, "phone.turned.running");
    }

    /** What the entry says cannot stand beside what is stored, for instance a document with its id. */
    ResponseEntity<?> contradiction(Entry entry, Exception why) {
        LOG.warn("Entry {} contradicts what is stored", entry.key(), why);
        return about(HttpStatus.CONFLICT, entry.key(), false, "phone.turned.contradiction");
    }

    ResponseEntity<?> badKey(String message) {
        return about(HttpStatus.BAD_REQUEST, null, false, message);
    }

    private ResponseEntity<?> about(HttpStatus status, @Nullable UUID key, boolean retry, String message) {
        String words = messages.getMessage(message, null, LocaleContextHolder.getLocale());
        return answer(status, new Turned(key, retry, List.of(new Turned.Reason("", words, message))));
    }

    private static ResponseEntity<?> answer(HttpStatus status, Turned turned) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .body(turned);
    }

    private Turned.Reason reason(ObjectError error) {
        MessageSourceResolvable words = error;
        return new Turned.Reason(
                error instanceof FieldError field ? field.getField() : "",
                messages.getMessage(words, LocaleContextHolder.getLocale()),
                error.getCode());
    }
}
