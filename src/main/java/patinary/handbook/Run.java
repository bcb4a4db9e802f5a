package patinary.handbook;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of text that looks the same throughout.
 *
 * @param href where it leads in the program; null where it leads nowhere
 */
record Run(
        String text,
        boolean strong,
        boolean leaning,
        boolean code,
        @Nullable String href) {

    static String plain(List<Run> runs) {
        return runs.stream().map(Run::text).collect(Collectors.joining());
    }
}
