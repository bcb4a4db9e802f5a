package patinary.finishes;

import java.util.List;
import java.util.Optional;

/**
 * The middle of some figures and how far they lie apart.
 *
 * @param count how many
 * @param median the middle one; between two middle ones the mean, rounded half up
 */
record Spread(int count, long median, long least, long most) {

    /** Fewer say nothing of how a finish usually goes (common practice, no source). */
    static final int ENOUGH = 3;

    static Optional<Spread> of(List<Long> figures) {
        if (figures.isEmpty()) {
            return Optional.empty();
        }
        List<Long> sorted = figures.stream().sorted().toList();
        int half = sorted.size() / 2;
        long upper = sorted.get(half);
        long median = sorted.size() % 2 == 1 ? upper : Math.floorDiv(sorted.get(half - 1) + upper + 1, 2L);
        return Optional.of(new Spread(sorted.size(), median, sorted.get(0), sorted.get(sorted.size() - 1)));
    }

    public boolean isEnough() {
        return count >= ENOUGH;
    }
}
