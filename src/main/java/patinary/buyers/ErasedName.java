package patinary.buyers;

import java.util.Collection;
import java.util.OptionalInt;

/** What stands in the place of an erased name: the same word for all, with a number that tells one from the other. */
final class ErasedName {

    private static final String WORD = "Erased buyer ";

    private ErasedName() {}

    /** Whether a name is one of these. */
    static boolean is(String name) {
        return number(name).isPresent();
    }

    /** The next one after those that are in use. */
    static String next(Collection<String> inUse) {
        int last = inUse.stream().mapToInt(name -> number(name).orElse(0)).max().orElse(0);
        return WORD + (last + 1);
    }

    private static OptionalInt number(String name) {
        boolean own = name.startsWith(WORD) && name.substring(WORD.length()).matches("[1-9][0-9]{0,8}");
        return own ? OptionalInt.of(Integer.parseInt(name.substring(WORD.length()))) : OptionalInt.empty();
    }
}
