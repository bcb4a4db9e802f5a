package patinary.buying;

import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/**
 * A difference to the till's total that nobody could explain yet. It is carried by the title of the line or discount that
 * stands for it: once she knows, she renames, changes or takes out that line, and the question is closed with it.
 */
@Component
class OpenQuestion {

    private final MessageSource messages;

    OpenQuestion(MessageSource messages) {
        this.messages = messages;
    }

    /** The title of what is not known yet. */
    String title() {
        return messages.getMessage("buying.open-question", null, LocaleContextHolder.getLocale());
    }

    boolean isOn(ReceiptContent receipt) {
        String title = title();
        return receipt.lines().stream().anyMatch(line -> line.title().equals(title))
                || receipt.charges().stream().anyMatch(charge -> charge.title().equals(title));
    }
}
