package patinary.shop;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.FactorGrantedAuthority;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.web.webauthn.api.AuthenticatorAssertionResponse;
import org.springframework.security.web.webauthn.api.AuthenticatorAttestationResponse;
import org.springframework.security.web.webauthn.api.PublicKeyCredential;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialCreationOptions;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialRequestOptions;
import org.springframework.security.web.webauthn.jackson.WebauthnJacksonModule;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.TransactionException;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.web.NotFound;
import patinary.web.Notice;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What the script of the passkeys talks to. Each answer fits one question, which is kept in the state of the device and forgotten
 * when it was answered.
 */
@Controller
class PasskeyController {

    private static final Logger LOG = LoggerFactory.getLogger(PasskeyController.class);
    private static final String ASKED = "patinary.passkey.asked";
    private static final String OFFERED = "patinary.passkey.offered";
    private static final String REFUSED = "{\"reason\":\"passkey\"}";

    private final PasskeyPlaces places;
    private final PasskeyDesk desk;
    private final Passkeys keys;
    private final SignInPeople people;
    private final Entrance entrance;
    private final AfterSignIn after;
    private final JsonMapper json =
            JsonMapper.builder().addModule(new WebauthnJacksonModule()).build();

    PasskeyController(
            PasskeyPlaces places,
            PasskeyDesk desk,
            Passkeys keys,
            SignInPeople people,
            Entrance entrance,
            AfterSignIn after) {
        this.places = places;
        this.desk = desk;
        this.keys = keys;
        this.people = people;
        this.entrance = entrance;
        this.after = after;
    }

    @PostMapping("/me/passkeys/options")
    ResponseEntity<String> offer(Authentication who, HttpServletRequest request) {
        PublicKeyCredentialCreationOptions options = desk.offer(here(request), who);
        request.getSession().setAttribute(OFFERED, options);
        return answer(json.writeValueAsString(options));
    }

    @PostMapping(path = "/me/passkeys", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<String> keep(@RequestBody String body, HttpServletRequest request) {
        try {
            Object asked = taken(request.getSession(), OFFERED);
            JsonNode sent = json.readTree(body);
            PublicKeyCredential<AuthenticatorAttestationResponse> made = json.readerFor(
                            new TypeReference<PublicKeyCredential<AuthenticatorAttestationResponse>>() {})
                    .readValue(sent.get("credential"));
            desk.keep(here(request), (PublicKeyCredentialCreationOptions) asked, made, label(sent));
            LOG.info("A passkey was made from {}", request.getRemoteAddr());
            return answer("{}");
        } catch (RuntimeException refused) {
            return refuse(request, refused);
        }
    }

    @PostMapping("/me/passkeys/remove")
    String remove(@RequestParam String mark, HttpServletRequest request, RedirectAttributes redirect) {
        if (!keys.remove(request.getRemoteUser(), mark)) {
            throw new NotFound("passkey");
        }
        LOG.info("A passkey was removed from {}", request.getRemoteAddr());
        Notice.next(redirect, "people.passkey.removed");
        return "redirect:/me";
    }

    @PostMapping("/passkey/options")
    ResponseEntity<String> ask(HttpServletRequest request) {
        PublicKeyCredentialRequestOptions options = desk.ask(here(request));
        request.getSession().setAttribute(ASKED, options);
        return answer(json.writeValueAsString(options));
    }

    @PostMapping(path = "/passkey", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<String> signIn(@RequestBody String body, HttpServletRequest request, HttpServletResponse response) {
        try {
            UserDetails person = people.loadUserByUsername(signed(body, request));
            Authentication who = entrance.let(
                    person, person.getAuthorities(), FactorGrantedAuthority.WEBAUTHN_AUTHORITY, request, response);
            return answer(json.writeValueAsString(Map.of("to", after.arrive(request, response, who))));
        } catch (RuntimeException refused) {
            return refuse(request, refused);
        }
    }

    /** Shows once more that it is her; a passkey of somebody else shows nothing. */
    @PostMapping(path = "/prove/passkey", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<String> prove(
            @RequestBody String body, Authentication before, HttpServletRequest request, HttpServletResponse response) {
        try {
            if (!signed(body, request).equals(before.getName())) {
                throw new IllegalArgumentException("Another person's passkey");
            }
            entrance.let(
                    before.getPrincipal(),
                    before.getAuthorities(),
                    FactorGrantedAuthority.WEBAUTHN_AUTHORITY,
                    request,
                    response);
            return answer("{}");
        } catch (RuntimeException refused) {
            return refuse(request, refused);
        }
    }

    private String signed(String body, HttpServletRequest request) {
        Object asked = taken(request.getSession(), ASKED);
        PublicKeyCredential<AuthenticatorAssertionResponse> answer =
                json.readValue(body, new TypeReference<PublicKeyCredential<AuthenticatorAssertionResponse>>() {});
        return desk.who(here(request), (PublicKeyCredentialRequestOptions) asked, answer);
    }

    private PasskeyPlaces.Place here(HttpServletRequest request) {
        return places.of(request).orElseThrow(() -> new NotFound("passkeys at this address"));
    }

    private static Object taken(HttpSession session, String question) {
        Object asked = session.getAttribute(question);
        session.removeAttribute(question);
        if (asked == null) {
            throw new IllegalArgumentException("Nothing was asked");
        }
        return asked;
    }

    private static String label(JsonNode sent) {
        String label = sent.path("label").asString("").strip();
        if (label.isEmpty() || label.length() > Answers.NAME) {
            throw new IllegalArgumentException("A passkey needs a short name");
        }
        return label;
    }

    private static ResponseEntity<String> answer(String body) {
        return ResponseEntity.ok().contentType(MediaType.APPLICATION_JSON).body(body);
    }

    /** One answer whatever the reason was; the log has its kind. A store in trouble is no reason, and has its own answer. */
    private static ResponseEntity<String> refuse(HttpServletRequest request, RuntimeException refused) {
        if (refused instanceof DataAccessException || refused instanceof TransactionException) {
            throw refused;
        }
        LOG.warn(
                "A passkey was refused from {}: {}",
                request.getRemoteAddr(),
                refused.getClass().getSimpleName());
        return ResponseEntity.badRequest()
                .contentType(MediaType.APPLICATION_JSON)
                .body(REFUSED);
    }
}
