package patinary.web;

import java.io.Serializable;
import java.util.List;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/**
 * A short sentence on the next page about what has just been done.
 *
 * @param key the key of the message
 * @param details what fills its gaps
 */
public record Notice(String key, List<String> details) implements Serializable {

    /** Shows the sentence once, on the page that follows the redirect. */
    public static void next(RedirectAttributes redirect, String key, String... details) {
        redirect.addFlashAttribute("notice", new Notice(key, List.of(details)));
    }
}
