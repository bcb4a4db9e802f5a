package patinary.web;

import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;

/** The pages behind a refusal; the sign-in forwards to them, whatever the method was. */
@Controller
class RefusedController {

    @RequestMapping("/refused")
    @ResponseStatus(HttpStatus.FORBIDDEN)
    String closed() {
        return "error/403";
    }

    @RequestMapping("/refused/too-old")
    @ResponseStatus(HttpStatus.FORBIDDEN)
    String tooOld() {
        return "error/expired";
    }
}
