package patinary.handbook;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import patinary.web.Tongue;

/** Where a link of a page leads in the program. */
final class Links {

    private static final Pattern PAGE =
            Pattern.compile("(?:\\.\\./(guide|handbook)/)?([A-Za-z0-9-]+)\\.(md|csv)(#[\\p{L}\\p{N}_-]+)?");
    private static final Pattern PICTURE = Pattern.compile("pictures/([a-z0-9-]+\\.jpeg)");
    private static final Pattern HERE = Pattern.compile("#[\\p{L}\\p{N}_-]+");

    private Links() {}

    /**
     * A page with its links as its English twin writes them. A page in another language stands in a folder of its own, so that
     * its links lead to the right files there too, where they are read without the program.
     */
    static String asInEnglish(Tongue tongue, String markdown) {
        return tongue == Tongue.ENGLISH
                ? markdown
                : markdown.replace("](../", "](")
                        .replaceAll("\\]\\(\\.\\./(guide|handbook)/" + tongue.code() + "/", "](../$1/");
    }

    /** @throws IllegalArgumentException where the picture is not one of the shelf's own */
    static String picture(Shelf shelf, String target) {
        Matcher picture = PICTURE.matcher(target);
        if (!picture.matches()) {
            throw new IllegalArgumentException("no picture of the " + shelf.word() + ": " + target);
        }
        return "/" + shelf.word() + "/" + picture.group(1);
    }

    /** @return null where it leads to what is not in the program, such as a decision record: its words stay, without a link */
    static @Nullable String of(Shelf shelf, String target) {
        if (HERE.matcher(target).matches()) {
            return target;
        }
        Matcher page = PAGE.matcher(target);
        if (!page.matches()) {
            return null;
        }
        Shelf to = page.group(1) == null ? shelf : page.group(1).equals("guide") ? Shelf.GUIDE : Shelf.HANDBOOK;
        if (page.group(3).equals("csv")) {
            return to.address(page.group(2)) + ".csv";
        }
        return to.address(page.group(2)) + (page.group(4) == null ? "" : page.group(4));
    }
}
