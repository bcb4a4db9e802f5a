package patinary.exchange;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.Part;
import java.util.Collection;
import java.util.Collections;
import java.util.Enumeration;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A request whose form is a {@link FormStream}. Whoever asks for a field gets it from there; the server's own way of reading, which
 * stores every file of a form before it tells the first field, is not reached through it.
 */
final class StreamedForm extends HttpServletRequestWrapper {

    /** What the form is to everything further in: bytes that only the {@link FormStream} reads. */
    private static final String BYTES = "application/octet-stream";

    private final FormStream form;

    StreamedForm(HttpServletRequest request, FormStream form) {
        super(request);
        this.form = form;
    }

    @Override
    public String getContentType() {
        return BYTES;
    }

    @Override
    public @Nullable String getParameter(String name) {
        return form.fields().get(name);
    }

    @Override
    public String @Nullable [] getParameterValues(String name) {
        return getParameterMap().get(name);
    }

    @Override
    public Map<String, String[]> getParameterMap() {
        return form.fields().entrySet().stream()
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, field -> new String[] {field.getValue()}));
    }

    @Override
    public Enumeration<String> getParameterNames() {
        return Collections.enumeration(form.fields().keySet());
    }

    @Override
    public Collection<Part> getParts() {
        return List.of();
    }

    @Override
    public @Nullable Part getPart(String name) {
        return null;
    }
}
