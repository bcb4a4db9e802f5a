package patinary.phone;

import java.security.Principal;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Controller;
import org.springframework.util.DigestUtils;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;
import patinary.web.House;
import patinary.web.PhonePages;
import tools.jackson.databind.json.JsonMapper;

/** What the script of the phone's pages asks for. */
@Controller
@RequestMapping("/phone")
class PhoneController {

    private final ObjectProvider<PhoneList> lists;
    private final ObjectProvider<PhoneLists> families;
    private final JsonMapper json;
    private final ProgramVersion version;
    private final House house;

    PhoneController(
            ObjectProvider<PhoneList> lists,
            ObjectProvider<PhoneLists> families,
            JsonMapper json,
            ProgramVersion version,
            House house) {
        this.lists = lists;
        this.families = families;
        this.json = json;
        this.version = version;
        this.house = house;
    }

    /**
     * @param signedIn whether entries can be sent now
     * @param header the name of the header that carries the token, or null while signed out
     * @param token what a change must carry
     * @param person whose things on this phone are hers to see, or null while signed out
     * @param version of the pages, see {@link ProgramVersion}
     */
    record Token(
            boolean signedIn,
            @Nullable String header,
            @Nullable String token,
            @Nullable String person,
            String version) {}

    @GetMapping("/token")
    @ResponseBody
    Token token(@Nullable Principal who, CsrfToken token) {
        return who == null
                ? new Token(false, null, null, null, version.text())
                : new Token(true, token.getHeaderName(), token.getToken(), who.getName(), version.text());
    }

    /** All lists under their names that the person may see. The phone asks with the tag of the lists it has. */
    @GetMapping("/lists")
    ResponseEntity<byte[]> lists() {
        Map<String, Object> all = new TreeMap<>();
        lists.stream()
                .filter(list -> house.tellsCosts() || !list.tellsCosts())
                .forEach(list -> all.put(list.name(), list.rows()));
        families.forEach(family -> all.putAll(family.all()));
        byte[] body = json.writeValueAsBytes(all);
        return ResponseEntity.ok()
                // A weak tag: the server does not compress what bears a strong one.
                .eTag("W/\"" + DigestUtils.md5DigestAsHex(body) + "\"")
                .contentType(MediaType.APPLICATION_JSON)
                .body(body);
    }

    /** Stands behind the sign-in, which leads here, and on to the page that asked for it. */
    @GetMapping("/sign-in")
    String signedIn(@RequestParam(defaultValue = "") String back) {
        return "redirect:" + (PhonePages.ALL.contains(back) ? back : PhonePages.WAITING);
    }
}
