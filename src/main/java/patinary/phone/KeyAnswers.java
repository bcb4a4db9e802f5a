package patinary.phone;

import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;

/** Answers an entry whose key cannot be used; asked before the advice that answers anything. */
@ControllerAdvice
@Order(Ordered.HIGHEST_PRECEDENCE)
class KeyAnswers {

    private final Turning turning;

    KeyAnswers(Turning turning) {
        this.turning = turning;
    }

    @ExceptionHandler
    ResponseEntity<?> badKey(KeyRefused refused) {
        return turning.badKey(refused.messageKey());
    }
}
