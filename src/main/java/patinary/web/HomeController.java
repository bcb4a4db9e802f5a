package patinary.web;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/** The page after signing in. */
@Controller
class HomeController {

    @GetMapping("/")
    String home() {
        return "home";
    }

    @GetMapping("/help")
    String help() {
        return "help";
    }
}
