package patinary.phone;

import jakarta.servlet.http.HttpServletRequest;
import java.security.Principal;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.core.MethodParameter;
import org.springframework.stereotype.Component;
import org.springframework.web.bind.support.WebDataBinderFactory;
import org.springframework.web.context.request.NativeWebRequest;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.method.support.ModelAndViewContainer;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Gives a controller's method the {@link Delivery} of its request. */
@Component
class DeliveryArgument implements HandlerMethodArgumentResolver, WebMvcConfigurer {

    private final Deliveries deliveries;

    DeliveryArgument(Deliveries deliveries) {
        this.deliveries = deliveries;
    }

    @Override
    public void addArgumentResolvers(List<HandlerMethodArgumentResolver> resolvers) {
        resolvers.add(this);
    }

    @Override
    public boolean supportsParameter(MethodParameter parameter) {
        return parameter.getParameterType() == Delivery.class;
    }

    /** @throws KeyRefused where the key is missing, is none, or is not the id that the form names */
    @Override
    public Delivery resolveArgument(
            MethodParameter parameter,
            @Nullable ModelAndViewContainer model,
            NativeWebRequest web,
            @Nullable WebDataBinderFactory binders) {
        HttpServletRequest request = Objects.requireNonNull(web.getNativeRequest(HttpServletRequest.class));
        Principal who = Objects.requireNonNull(request.getUserPrincipal(), "An entry is taken from a signed-in person");
        Entry entry = new Entry(
                key(request),
                who.getName(),
                Fingerprint.of(request),
                moment(request.getHeader(Delivery.CAPTURED)),
                number(request.getHeader(Delivery.FORM)));
        return new Delivery(deliveries, entry);
    }

    private static UUID key(HttpServletRequest request) {
        String header = request.getHeader(Delivery.KEY);
        if (header == null) {
            throw new KeyRefused("phone.key.missing");
        }
        UUID key = EntryKey.read(header).orElseThrow(() -> new KeyRefused("phone.key.form"));
        String id = request.getParameter("id");
        if (id != null && !id.equalsIgnoreCase(key.toString())) {
            throw new KeyRefused("phone.key.other-id");
        }
        return key;
    }

    private static int number(@Nullable String header) {
        return header != null && header.matches("[1-9][0-9]{0,3}") ? Integer.parseInt(header) : 1;
    }

    private static @Nullable Instant moment(@Nullable String header) {
        try {
            return header == null ? null : Instant.parse(header);
        } catch (DateTimeParseException unreadable) {
            return null;
        }
    }
}
