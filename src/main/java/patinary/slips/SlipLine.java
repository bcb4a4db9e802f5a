package patinary.slips;

import java.util.List;
import java.util.stream.Collectors;

/** The words that stand on one line, from left to right. */
record SlipLine(List<SlipWord> words) {

    SlipLine {
        words = List.copyOf(words);
    }

    String text() {
        return words.stream().map(SlipWord::text).collect(Collectors.joining(" "));
    }

    /** The least sure word decides. */
    double confidence() {
        return words.stream().mapToDouble(SlipWord::confidence).min().orElse(0);
    }
}
