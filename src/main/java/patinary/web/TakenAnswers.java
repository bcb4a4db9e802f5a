package patinary.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Collections;
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * On a page with both versions of a form, the saved answer is taken where it is ticked: the field gets the answer that stood
 * beside it, before anything else reads the form.
 */
@Component
@Order(0)
class TakenAnswers extends OncePerRequestFilter {

    /** Its values name the fields of which the saved answer is taken. */
    static final String TAKE = "take";

    /** Before the name of a field: the saved answer. */
    static final String TAKEN = "taken.";

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        boolean taking = request.getMethod().equals("POST") && request.getParameter(TAKE) != null;
        chain.doFilter(taking ? new Taken(request) : request, response);
    }

    private static final class Taken extends HttpServletRequestWrapper {

        private final Map<String, String[]> answers;

        Taken(HttpServletRequest request) {
            super(request);
            answers = new LinkedHashMap<>(request.getParameterMap());
            for (String field : request.getParameterValues(TAKE)) {
                String[] saved = answers.get(TAKEN + field);
                if (saved != null) {
                    answers.put(field, saved);
                }
            }
            answers.keySet().removeIf(name -> name.equals(TAKE) || name.startsWith(TAKEN));
        }

        @Override
        public @Nullable String getParameter(String name) {
            String[] values = answers.get(name);
            return values == null ? null : values[0];
        }

        @Override
        public String @Nullable [] getParameterValues(String name) {
            return answers.get(name);
        }

        @Override
        public Map<String, String[]> getParameterMap() {
            return Collections.unmodifiableMap(answers);
        }

        @Override
        public Enumeration<String> getParameterNames() {
            return Collections.enumeration(answers.keySet());
        }
    }
}
