package patinary.web;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.BeanUtils;
import org.springframework.beans.MutablePropertyValues;
import org.springframework.beans.PropertyAccessorFactory;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.WebDataBinder;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * When somebody else changed the same thing in between: the page of the form is drawn again as it is saved now, with what was
 * typed put back into its fields and the saved answer beside each that differs. Saving it again keeps what was typed, but for
 * the fields where the saved answer is ticked ({@link TakenAnswers}).
 *
 * <p>Works for every form that carries its version, and with it the address of its page.
 */
@Component
class BothVersions implements HandlerInterceptor, WebMvcConfigurer {

    /** The name under which a form carries the address of its page. */
    static final String DRAWN = "drawn";

    private static final String TYPED = BothVersions.class.getName() + ".typed";
    private static final Pattern OWN_PAGE = Pattern.compile("/(?!/)[\\w./~%-]*(\\?[^#\\\\]*)?");

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(this);
    }

    /** Draws the page with both versions; false where the form does not say which page it stands on. */
    boolean show(HttpServletRequest request, HttpServletResponse response) {
        String page = request.getParameter(DRAWN);
        if (page == null || page.contains("..") || !OWN_PAGE.matcher(page).matches()) {
            return false;
        }
        AsRead reading = new AsRead(request, page);
        reading.setAttribute(TYPED, new LinkedHashMap<>(request.getParameterMap()));
        reading.setAttribute(DRAWN, page);
        try {
            response.setStatus(HttpStatus.CONFLICT.value());
            reading.getRequestDispatcher(page).forward(reading, response);
            return true;
        } catch (ServletException | IOException failed) {
            throw new IllegalStateException(failed);
        } finally {
            reading.removeAttribute(TYPED);
        }
    }

    @Override
    public void postHandle(
            HttpServletRequest request, HttpServletResponse response, Object handler, @Nullable ModelAndView page) {
        if (page == null || page.getViewName() == null || page.getViewName().startsWith("redirect:")) {
            return;
        }
        page.addObject(DRAWN, drawn(request));
        Object saved = page.getModel().get("form");
        if (request.getAttribute(TYPED) instanceof Map<?, ?> typed && saved != null) {
            putBack(typed, saved, page);
        }
    }

    /** Where the form of this page was first drawn: a page that is shown again with errors has another address. */
    private static @Nullable Object drawn(HttpServletRequest request) {
        Object kept = request.getAttribute(DRAWN);
        if (kept != null) {
            return kept;
        }
        if (!request.getMethod().equals("GET")) {
            return request.getParameter(DRAWN);
        }
        return request.getQueryString() == null
                ? request.getRequestURI()
                : request.getRequestURI() + "?" + request.getQueryString();
    }

    private static void putBack(Map<?, ?> typed, Object saved, ModelAndView page) {
        Object mine = BeanUtils.instantiateClass(saved.getClass());
        Map<String, List<String>> theirs = FormText.of(saved);
        MutablePropertyValues values = new MutablePropertyValues(typed);
        List.of("version", DRAWN).forEach(values::removePropertyValue);
        // A line that only the other has gets a place to stand in.
        theirs.forEach((name, answers) -> {
            if (name.contains("[") && !values.contains(name) && answers.size() == 1) {
                values.add(name, "");
            }
        });
        WebDataBinder binder = new WebDataBinder(mine, "form");
        new FormBinding().read(binder);
        binder.setIgnoreInvalidFields(true);
        binder.bind(values);
        version(saved, mine);
        page.addObject("form", mine);
        page.addObject(BindingResult.MODEL_KEY_PREFIX + "form", binder.getBindingResult());
        page.addObject("theirs", Theirs.between(FormText.of(mine), theirs));
    }

    /** From here on what is saved now has been seen. */
    private static void version(Object saved, Object mine) {
        var from = PropertyAccessorFactory.forDirectFieldAccess(saved);
        if (from.isReadableProperty("version")) {
            PropertyAccessorFactory.forDirectFieldAccess(mine)
                    .setPropertyValue("version", from.getPropertyValue("version"));
        }
    }
}
