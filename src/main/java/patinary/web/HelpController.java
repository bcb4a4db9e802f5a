package patinary.web;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/** The words of the shop, explained. */
@Controller
class HelpController {

    @GetMapping("/help")
    String help() {
        return "help";
    }
}
