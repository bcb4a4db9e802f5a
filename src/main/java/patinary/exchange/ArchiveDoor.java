package patinary.exchange;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Lets the form that brings an archive in be as large as one is, and has it read as it comes, so that who sends it, whether she just
 * showed that it is her, and the token of her form are looked at before a byte of the file is kept. Stands before all that asks for
 * a field. Every other form is read by the server, within its limits; so is this one where it is not written as browsers write it.
 */
@Component
@Order(ArchiveDoor.BEFORE_THE_FIRST_QUESTION)
class ArchiveDoor extends OncePerRequestFilter {

    static final int BEFORE_THE_FIRST_QUESTION = -103;
    static final String PATH = "/shop/archive";

    private static final String FORM = ArchiveDoor.class.getName();

    /** The form of this request; null where it did not come as one with a file. */
    static @Nullable FormStream form(HttpServletRequest request) {
        return (FormStream) request.getAttribute(FORM);
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return form(request) == null && !(request.getRequestURI().equals(PATH) && isForm(request.getContentType()));
    }

    /** A refusal is drawn with the request as the server knows it: there too nothing of the file is to be kept. */
    @Override
    protected boolean shouldNotFilterErrorDispatch() {
        return false;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        FormStream form = form(request);
        if (form == null) {
            form = new FormStream(request);
            request.setAttribute(FORM, form);
        }
        chain.doFilter(new StreamedForm(request, form), response);
    }

    private static boolean isForm(@Nullable String type) {
        String plain = type == null ? "" : type.toLowerCase(Locale.ROOT);
        return plain.startsWith("multipart/form-data") && plain.contains("boundary=");
    }
}
