package yardstick;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

@Controller
class BarePages {

    private final Jars jars;

    BarePages(Jars jars) {
        this.jars = jars;
    }

    @GetMapping("/sign-in")
    String signIn() {
        return "sign-in";
    }

    @GetMapping("/list")
    String list(Model model) {
        model.addAttribute("jars", jars.findAllByOrderByName());
        return "list";
    }
}
