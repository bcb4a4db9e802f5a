package patinary.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Enumeration;
import java.util.regex.Pattern;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Refuses a request whose fields are not named as the fields of a form are: a repeated line has a short number. */
@Component
class FieldNames implements HandlerInterceptor, WebMvcConfigurer {

    private static final Pattern PLAIN = Pattern.compile("[^\\[\\]]*(\\[\\d{1,3}][^\\[\\]]*)*");

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(this);
    }

    @Override
    public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler) {
        for (Enumeration<String> names = request.getParameterNames(); names.hasMoreElements(); ) {
            if (!PLAIN.matcher(names.nextElement()).matches()) {
                throw new ResponseStatusException(HttpStatus.BAD_REQUEST);
            }
        }
        return true;
    }
}
