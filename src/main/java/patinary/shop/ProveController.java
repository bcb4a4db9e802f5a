package patinary.shop;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.http.server.PathContainer;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.FactorGrantedAuthority;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * Where somebody who is signed in shows once more that it is her, and goes on to what she wanted. A form that had to wait for
 * it is sent again by her browser, with everything she typed.
 */
@Controller
class ProveController {

    static final String PAGE = "/prove";

    /** Where a form that waits is forwarded to; nobody comes here by the address. */
    static final String HELD = "/prove/held";

    /** Words of the proof's own form, so that they do not mix with those of the form that waits. */
    private static final Set<String> OWN = Set.of("proof", "to", "sending", "_csrf");

    /** A field of the form that waits. */
    record Field(String name, String value) {}

    private final PasswordAgain passwords;
    private final Entrance entrance;

    ProveController(PasswordAgain passwords, Entrance entrance) {
        this.passwords = passwords;
        this.entrance = entrance;
    }

    @GetMapping(PAGE)
    String ask(
            @RequestParam(defaultValue = "/") String back,
            @ModelAttribute(name = "form", binding = false) ProofForm form,
            Model model) {
        return page(model, known("GET", back), List.of(), "GET");
    }

    @PostMapping(HELD)
    String hold(
            HttpServletRequest request,
            HttpServletResponse response,
            @ModelAttribute(name = "form", binding = false) ProofForm form,
            Model model) {
        Object from = request.getAttribute(RequestDispatcher.FORWARD_REQUEST_URI);
        response.setStatus(HttpServletResponse.SC_FORBIDDEN);
        return page(model, known("POST", from instanceof String path ? path : "/"), fields(request), "POST");
    }

    @PostMapping(PAGE)
    @Nullable
    String prove(
            @ModelAttribute("form") ProofForm form,
            BindingResult errors,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        String method = "POST".equals(form.sending) ? "POST" : "GET";
        String to = known(method, form.to);
        if (!passwords.isRight(request.getRemoteUser(), form.proof, request.getRemoteAddr())) {
            errors.rejectValue("proof", "people.error.proof");
            response.setStatus(422);
            return page(model, to, fields(request), method);
        }
        Authentication before = SecurityContextHolder.getContext().getAuthentication();
        entrance.let(
                before.getPrincipal(),
                before.getAuthorities(),
                FactorGrantedAuthority.PASSWORD_AUTHORITY,
                request,
                response);
        // 307 lets the browser send the same form once more, to the place it was meant for.
        response.setStatus(
                method.equals("POST") ? HttpServletResponse.SC_TEMPORARY_REDIRECT : HttpServletResponse.SC_SEE_OTHER);
        response.setHeader("Location", to);
        return null;
    }

    /** A place of this shop that asks for proof; nothing else is gone on to, wherever the address came from. */
    private static String known(String method, String to) {
        if (!to.startsWith("/") || to.startsWith("//")) {
            return "/";
        }
        String path = to.replaceAll("[?#].*", "");
        boolean asked = Proofs.before(method, PathContainer.parsePath(path)).isPresent();
        return asked && isPlain(path) && isAddress(to) ? to : "/";
    }

    /** Nothing in it that a browser would read as another place than the table did. */
    private static boolean isPlain(String path) {
        return !path.contains("..") && !path.contains("\\") && !path.contains("%");
    }

    private static boolean isAddress(String text) {
        try {
            return URI.create(text).getRawAuthority() == null;
        } catch (IllegalArgumentException unreadable) {
            return false;
        }
    }

    private static List<Field> fields(HttpServletRequest request) {
        List<Field> fields = new ArrayList<>();
        for (Map.Entry<String, String[]> entry : request.getParameterMap().entrySet()) {
            if (!OWN.contains(entry.getKey())) {
                for (String value : entry.getValue()) {
                    fields.add(new Field(entry.getKey(), value));
                }
            }
        }
        return fields;
    }

    private static String page(Model model, String to, List<Field> fields, String method) {
        model.addAttribute("to", to);
        model.addAttribute("fields", fields);
        model.addAttribute("sending", method);
        return "shop/prove";
    }
}
