package patinary.labels;

import java.util.List;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import patinary.web.Choice;
import patinary.web.Fmt;

/** Names grids for people: hers by her name, the others by their measures. */
@Component
class GridNames {

    private final MessageSource messages;
    private final Fmt fmt;

    GridNames(MessageSource messages, Fmt fmt) {
        this.messages = messages;
        this.fmt = fmt;
    }

    String of(KnownGrid known) {
        LabelGrid grid = known.grid();
        String width = fmt.number(grid.width());
        String height = fmt.number(grid.height());
        if (known.isOwn()) {
            return known.name();
        }
        return grid.isRoll()
                ? say("labels.grid.name.roll", width, height)
                : say(
                        "labels.grid.name.sheet",
                        String.valueOf(grid.columns()),
                        String.valueOf(grid.rows()),
                        say("labels.paper." + grid.paper().name()),
                        width,
                        height);
    }

    List<Choice> choices(List<KnownGrid> grids) {
        return grids.stream().map(known -> Choice.named(known.key(), of(known))).toList();
    }

    /** What stands above the ruler of a test page. */
    String testWords(LabelGrid grid) {
        return say("labels.test.words", String.valueOf(TestPage.ruler(grid)));
    }

    private String say(String key, Object... details) {
        return messages.getMessage(key, details, LocaleContextHolder.getLocale());
    }
}
