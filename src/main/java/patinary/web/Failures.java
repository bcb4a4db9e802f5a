package patinary.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Map;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.InvalidPropertyException;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.firewall.RequestRejectedException;
import org.springframework.web.ErrorResponse;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.multipart.MultipartException;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.view.json.JacksonJsonView;
import patinary.durable.StoreFailure;

/**
 * Turns what went wrong in a controller into a page that says so kindly and gives nothing away; for a script into the
 * same words as JSON.
 */
@ControllerAdvice
class Failures {

    private final MessageSource messages;
    private final BothVersions both;

    Failures(MessageSource messages, BothVersions both) {
        this.messages = messages;
        this.both = both;
    }

    @ExceptionHandler
    ModelAndView notFound(NotFound missing, HttpServletRequest request) {
        return page(request, "404", HttpStatus.NOT_FOUND);
    }

    /** An address with a misspelt id leads nowhere, as one with an unknown id does. */
    @ExceptionHandler
    ModelAndView misspelt(MethodArgumentTypeMismatchException misspelt, HttpServletRequest request) {
        return page(request, "404", HttpStatus.NOT_FOUND);
    }

    /**
     * A field's name that fits no form, as an index where there is no list; a header with signs that no header has; parts of a
     * form that never end; no JSON where JSON was said: only a request that was made by hand, or broke on its way, has one.
     */
    @ExceptionHandler({
        InvalidPropertyException.class,
        RequestRejectedException.class,
        InvalidParameterException.class,
        MultipartException.class,
        HttpMessageNotReadableException.class
    })
    ModelAndView malformed(Exception unreadable, HttpServletRequest request) {
        HttpStatusCode status =
                unreadable instanceof ErrorResponse known ? known.getStatusCode() : HttpStatus.BAD_REQUEST;
        return page(request, "4xx", status);
    }

    /** Somebody else, or another device, changed the same thing in between. Nothing is returned once the page is drawn. */
    @ExceptionHandler
    @Nullable
    ModelAndView changedMeanwhile(
            OptimisticLockingFailureException stale, HttpServletRequest request, HttpServletResponse response) {
        return !ScriptAnswers.wanted(request) && both.show(request, response)
                ? null
                : page(request, "409", HttpStatus.CONFLICT);
    }

    @ExceptionHandler
    ModelAndView busy(Busy another, HttpServletRequest request, HttpServletResponse response) {
        response.setIntHeader(HttpHeaders.RETRY_AFTER, StoreTrouble.SOON);
        return page(request, "busy", HttpStatus.SERVICE_UNAVAILABLE);
    }

    /** Refusals belong to the sign-in, which knows whether to ask for a name or to say no. */
    @ExceptionHandler({AccessDeniedException.class, AuthenticationException.class})
    void refused(RuntimeException refusal) {
        throw refusal;
    }

    @ExceptionHandler
    ModelAndView anythingElse(Exception failure, HttpServletRequest request) throws Exception {
        if (StoreFailure.of(failure) != StoreFailure.NONE) {
            // Told outside everything that asks the store, see StoreTrouble.
            throw failure;
        }
        if (Severed.is(failure)) {
            return page(request, "4xx", HttpStatus.BAD_REQUEST);
        }
        if (failure instanceof ErrorResponse known && known.getStatusCode().is4xxClientError()) {
            HttpStatusCode status = known.getStatusCode();
            return page(request, status.value() == 404 ? "404" : "4xx", status);
        }
        return page(request, "5xx", HttpStatus.INTERNAL_SERVER_ERROR).addObject("incident", Incident.of(failure));
    }

    private ModelAndView page(HttpServletRequest request, String trouble, HttpStatusCode status) {
        ModelAndView page = ScriptAnswers.wanted(request) ? words(trouble) : new ModelAndView("error/" + trouble);
        page.setStatus(status);
        return page;
    }

    /** What the page would have said, in the shape of every refusal of an entry. */
    private ModelAndView words(String trouble) {
        String words = messages.getMessage("web.error." + trouble + ".text", null, LocaleContextHolder.getLocale());
        return new ModelAndView(new JacksonJsonView())
                .addObject("retry", trouble.equals("5xx") || trouble.equals("busy"))
                .addObject("problems", List.of(Map.of("field", "", "words", words)));
    }
}
