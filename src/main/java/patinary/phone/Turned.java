package patinary.phone;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Why an entry was not taken. The phone keeps it.
 *
 * @param key the entry's id, or null where it could not be read
 * @param retry whether the same entry may be taken a little later; otherwise a person has to look at it
 * @param problems the reasons
 */
record Turned(@Nullable UUID key, boolean retry, List<Reason> problems) {

    /**
     * @param field the field of the form, or empty where the reason is about the whole
     * @param words what is wrong and how to put it right
     * @param reason the key of the words, by which a page's script knows what it has an answer to
     */
    record Reason(String field, String words, @Nullable String reason) {}
}
