package patinary.web;

import java.util.HashMap;
import java.util.Map;
import org.springframework.boot.web.error.ErrorAttributeOptions;
import org.springframework.boot.webmvc.error.DefaultErrorAttributes;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.WebRequest;

/** What an error page outside the controllers is told: the status and, where we failed, the incident's number. */
@Component
class ErrorFacts extends DefaultErrorAttributes {

    @Override
    public Map<String, Object> getErrorAttributes(WebRequest request, ErrorAttributeOptions options) {
        Map<String, Object> facts = new HashMap<>();
        Object status = super.getErrorAttributes(request, options).get("status");
        facts.put("status", status);
        Throwable failure = getError(request);
        if (failure != null && !Severed.is(failure)) {
            facts.put("incident", Incident.of(failure));
        } else if (failure == null && status instanceof Integer code && code >= 500) {
            facts.put("incident", Incident.number());
        }
        return facts;
    }
}
