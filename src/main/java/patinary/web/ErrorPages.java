package patinary.web;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.boot.autoconfigure.web.WebProperties;
import org.springframework.boot.webmvc.autoconfigure.error.BasicErrorController;
import org.springframework.boot.webmvc.autoconfigure.error.ErrorViewResolver;
import org.springframework.boot.webmvc.error.ErrorAttributes;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;

/** The pages for what went wrong outside the controllers. Whoever asks for one by its address finds nothing there. */
@Controller
class ErrorPages extends BasicErrorController {

    ErrorPages(ErrorAttributes facts, WebProperties properties, List<ErrorViewResolver> views) {
        super(facts, properties.getError(), views);
    }

    @Override
    protected HttpStatus getStatus(HttpServletRequest request) {
        return request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE) == null
                ? HttpStatus.NOT_FOUND
                : super.getStatus(request);
    }
}
