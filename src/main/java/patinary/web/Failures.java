package patinary.web;

import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.web.ErrorResponse;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.servlet.ModelAndView;

/** Turns what went wrong in a controller into a page that says so kindly and gives nothing away. */
@ControllerAdvice
class Failures {

    @ExceptionHandler
    ModelAndView notFound(NotFound missing) {
        return page("error/404", HttpStatus.NOT_FOUND);
    }

    /** An address with a misspelt id leads nowhere, as one with an unknown id does. */
    @ExceptionHandler
    ModelAndView misspelt(MethodArgumentTypeMismatchException misspelt) {
        return page("error/404", HttpStatus.NOT_FOUND);
    }

    /** Somebody else, or another device, changed the same thing in between. */
    @ExceptionHandler
    ModelAndView changedMeanwhile(OptimisticLockingFailureException stale) {
        return page("error/409", HttpStatus.CONFLICT);
    }

    /** Refusals belong to the sign-in, which knows whether to ask for a name or to say no. */
    @ExceptionHandler({AccessDeniedException.class, AuthenticationException.class})
    void refused(RuntimeException refusal) {
        throw refusal;
    }

    @ExceptionHandler
    ModelAndView anythingElse(Exception failure) {
        if (failure instanceof ErrorResponse known && known.getStatusCode().is4xxClientError()) {
            HttpStatusCode status = known.getStatusCode();
            return page(status.value() == 404 ? "error/404" : "error/4xx", status);
        }
        return page("error/5xx", HttpStatus.INTERNAL_SERVER_ERROR).addObject("incident", Incident.of(failure));
    }

    private static ModelAndView page(String view, HttpStatusCode status) {
        ModelAndView page = new ModelAndView(view);
        page.setStatus(status);
        return page;
    }
}
