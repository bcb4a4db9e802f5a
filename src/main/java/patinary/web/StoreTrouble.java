package patinary.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.MessageSource;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;
import patinary.durable.StoreCare;
import patinary.durable.StoreFailure;

/**
 * Answers where the store is busy, full or gone: a page that says which, keeps what was typed and sends it again at the press of
 * a button. Stands before everything else, since the signed-in state is in the same store, and asks nothing that is in it.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
class StoreTrouble extends OncePerRequestFilter {

    private static final Logger LOG = LoggerFactory.getLogger(StoreTrouble.class);
    /** Seconds after which it is worth asking again. */
    static final int SOON = 10;

    private final StoreCare care;
    private final ITemplateEngine pages;
    private final MessageSource messages;
    private final PageLocale locale;

    StoreTrouble(StoreCare care, ITemplateEngine pages, MessageSource messages, PageLocale locale) {
        this.care = care;
        this.pages = pages;
        this.messages = messages;
        this.locale = locale;
    }

    /** One answer of a form as it was typed. */
    record Typed(String name, String value) {

        /** What a person would know again: no token, no id. */
        public boolean isWords() {
            return !value.isBlank()
                    && !name.startsWith("_")
                    && !name.equals("drawn")
                    && !Ids.read(value).isPresent();
        }
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        List<Typed> typed = typed(request);
        try {
            chain.doFilter(request, response);
        } catch (ServletException | RuntimeException failed) {
            StoreFailure kind = care.look(failed);
            if (kind == StoreFailure.NONE || response.isCommitted()) {
                throw failed;
            }
            LOG.error("The store is in trouble: {}", kind, failed);
            answer(request, response, kind, typed);
        }
    }

    /** Read before anything can fail: afterwards the form may be gone with its request. A password goes on no page. */
    private static List<Typed> typed(HttpServletRequest request) {
        String type = String.valueOf(request.getContentType());
        if (!request.getMethod().equals("POST") || !type.startsWith("application/x-www-form-urlencoded")) {
            return List.of();
        }
        List<Typed> typed = new ArrayList<>();
        Map<String, String[]> answers = answers(request);
        boolean secret = answers.keySet().stream()
                .anyMatch(name -> name.toLowerCase(Locale.ROOT).contains("password"));
        if (!secret) {
            answers.forEach((name, values) -> {
                for (String value : values) {
                    typed.add(new Typed(name, value));
                }
            });
        }
        return typed;
    }

    /** None where they cannot be read at all: what is further in says so. */
    private static Map<String, String[]> answers(HttpServletRequest request) {
        try {
            return request.getParameterMap();
        } catch (IllegalStateException unreadable) {
            return Map.of();
        }
    }

    private void answer(HttpServletRequest request, HttpServletResponse response, StoreFailure kind, List<Typed> typed)
            throws IOException {
        response.reset();
        response.setStatus(HttpServletResponse.SC_SERVICE_UNAVAILABLE);
        response.setIntHeader("Retry-After", SOON);
        response.setHeader("Cache-Control", "no-store");
        response.setHeader("Content-Security-Policy", "default-src 'self'; form-action 'self'; frame-ancestors 'none'");
        response.setCharacterEncoding(StandardCharsets.UTF_8.name());
        String trouble = kind.name().toLowerCase(Locale.ROOT);
        if (ScriptAnswers.wanted(request)) {
            response.setContentType("application/json");
            response.getWriter()
                    .write("{\"retry\":true,\"problems\":[{\"field\":\"\",\"words\":\""
                            + messages.getMessage("web.store." + trouble, null, locale.withoutStore(request))
                            + "\"}]}");
            return;
        }
        response.setContentType("text/html");
        Context page = new Context(locale.withoutStore(request));
        page.setVariable("trouble", trouble);
        page.setVariable("typed", typed);
        page.setVariable("sends", request.getMethod().equals("POST"));
        page.setVariable("path", path(request));
        pages.process("error/store", page, response.getWriter());
    }

    private static String path(HttpServletRequest request) {
        return request.getQueryString() == null
                ? request.getRequestURI()
                : request.getRequestURI() + "?" + request.getQueryString();
    }
}
