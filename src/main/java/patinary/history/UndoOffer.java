package patinary.history;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.springframework.web.servlet.support.RequestContextUtils;
import patinary.web.House;

/** Where a form changed something and a notice says so on the next page, the notice offers to undo it. */
@Component
class UndoOffer implements HandlerInterceptor, WebMvcConfigurer {

    private static final String NOTICE = "notice";
    private static final String OFFER = "undoable";

    private final House house;

    UndoOffer(House house) {
        this.house = house;
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(this);
    }

    @Override
    public void postHandle(
            HttpServletRequest request, HttpServletResponse response, Object handler, @Nullable ModelAndView page) {
        Map<String, Object> next = RequestContextUtils.getOutputFlashMap(request);
        if (next != null && next.containsKey(NOTICE)) {
            Hand.done(request)
                    .filter(act -> !house.isClosed("POST", "/history/" + act + "/undo"))
                    .ifPresent(act -> next.put(OFFER, act.toString()));
        }
    }
}
