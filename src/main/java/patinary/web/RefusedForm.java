package patinary.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.validation.BindingResult;
import org.springframework.validation.Errors;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * Tells the layout, as {@code bad}, whether the page shows a form again because of its answers. Looked up in the page's
 * own model: a template that asks for a form which is not there would fail, on error pages above all.
 */
@Component
class RefusedForm implements HandlerInterceptor, WebMvcConfigurer {

    private static final String FORM = BindingResult.MODEL_KEY_PREFIX + "form";

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(this);
    }

    @Override
    public void postHandle(
            HttpServletRequest request, HttpServletResponse response, Object handler, @Nullable ModelAndView page) {
        if (page != null && page.getViewName() != null && !page.getViewName().startsWith("redirect:")) {
            page.addObject("bad", page.getModel().get(FORM) instanceof Errors errors && errors.hasErrors());
        }
    }
}
