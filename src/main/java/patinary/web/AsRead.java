package patinary.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import java.util.Collections;
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.util.MultiValueMap;
import org.springframework.web.util.UriComponentsBuilder;
import org.springframework.web.util.UriUtils;

/** The request of a form, turned into one that only reads the page the form stands on. */
final class AsRead extends HttpServletRequestWrapper {

    private final Map<String, String[]> asked = new LinkedHashMap<>();
    private final @Nullable String query;

    AsRead(HttpServletRequest request, String page) {
        super(request);
        var address = UriComponentsBuilder.fromUriString(page).build();
        query = address.getQuery();
        MultiValueMap<String, String> parameters = address.getQueryParams();
        parameters.forEach((name, values) -> asked.put(
                name,
                values.stream()
                        .map(value -> value == null ? "" : UriUtils.decode(value, "UTF-8"))
                        .toArray(String[]::new)));
    }

    @Override
    public String getMethod() {
        return "GET";
    }

    @Override
    public @Nullable String getContentType() {
        return null;
    }

    @Override
    public @Nullable String getQueryString() {
        return query;
    }

    @Override
    public @Nullable String getParameter(String name) {
        String[] values = asked.get(name);
        return values == null ? null : values[0];
    }

    @Override
    public String @Nullable [] getParameterValues(String name) {
        return asked.get(name);
    }

    @Override
    public Map<String, String[]> getParameterMap() {
        return Collections.unmodifiableMap(asked);
    }

    @Override
    public Enumeration<String> getParameterNames() {
        return Collections.enumeration(asked.keySet());
    }
}
