package patinary.phone;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.springframework.core.io.ClassPathResource;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import patinary.web.PhonePages;
import tools.jackson.databind.json.JsonMapper;

/** The script that keeps the phone's pages, and the page of what waits there to be sent. */
@Controller
class ShellController {

    private final String worker;

    ShellController(ProgramVersion version, JsonMapper json) throws IOException {
        String script = new ClassPathResource("static/sw.js").getContentAsString(StandardCharsets.UTF_8);
        String facts = "const VERSION = \"%s\", PAGES = %s;\n"
                .formatted(version.text(), json.writeValueAsString(PhonePages.ALL));
        worker = facts + script;
    }

    /** Asked for anew each time: its first lines tell a phone that its copies are out of date, or in another language. */
    @GetMapping("/sw.js")
    ResponseEntity<byte[]> worker(Locale locale) {
        String language = "const LANGUAGE = \"%s\";\n".formatted(locale.toLanguageTag());
        return ResponseEntity.ok()
                .cacheControl(CacheControl.noCache())
                .contentType(MediaType.parseMediaType("text/javascript;charset=UTF-8"))
                .body((language + worker).getBytes(StandardCharsets.UTF_8));
    }

    @GetMapping(PhonePages.WAITING)
    String waiting() {
        return "phone/waiting";
    }
}
