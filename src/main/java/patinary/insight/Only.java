package patinary.insight;

import java.util.List;
import java.util.Optional;

/** One group of pieces that a page may be narrowed to. */
record Only(Trait by, String name) {

    /** How it stands in an address. */
    public String word() {
        return by.word() + ":" + name;
    }

    static Optional<Only> of(String word, List<Only> choices) {
        return choices.stream().filter(choice -> choice.word().equals(word)).findFirst();
    }
}
