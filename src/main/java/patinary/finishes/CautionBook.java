package patinary.finishes;

import java.util.Collection;
import java.util.List;

/** What there is to look out for. The bench has the texts; a finish only names them. */
public interface CautionBook {

    /**
     * A caution.
     *
     * @param severity a word of {@code bench.severity.*}
     */
    record Text(String id, String severity, String text, String source) {}

    /** All of them. */
    List<Text> all();

    /** Those of these ids and those that these words call up, the most serious first. */
    List<Text> about(Collection<String> ids, Collection<String> words);
}
