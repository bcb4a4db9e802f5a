package patinary.phone;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
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

    private final byte[] worker;

    ShellController(ProgramVersion version, JsonMapper json) throws IOException {
        String script = new ClassPathResource("static/sw.js").getContentAsString(StandardCharsets.UTF_8);
        String facts = "const VERSION = \"%s\", PAGES = %s;\n"
                .formatted(version.text(), json.writeValueAsString(PhonePages.ALL));
        worker = (facts + script).getBytes(StandardCharsets.UTF_8);
    }

    /** Asked for anew each time: its first line tells a phone that its copies are out of date. */
    @GetMapping("/sw.js")
    ResponseEntity<byte[]> worker() {
        return ResponseEntity.ok()
                .cacheControl(CacheControl.noCache())
                .contentType(MediaType.parseMediaType("text/javascript;charset=UTF-8"))
                .body(worker);
    }

    @GetMapping(PhonePages.WAITING)
    String waiting() {
        return "phone/waiting";
    }
}
