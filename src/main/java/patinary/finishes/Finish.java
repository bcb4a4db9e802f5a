package patinary.finishes;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.measure.Coverage;

/**
 * The saved way of doing a look.
 *
 * @param steps what to do, in order
 * @param needs the supplies, in the order of their steps
 */
public record Finish(String name, String note, List<Step> steps, List<Need> needs) {

    /**
     * One step.
     *
     * @param line its place, from 1
     * @param minutes of work on one piece
     * @param pause what is waited for after the work, or null
     * @param cautions ids of the cautions that go with it
     */
    public record Step(
            int line, String what, int minutes, @Nullable Wait pause, List<String> cautions) {}

    /**
     * A wait.
     *
     * @param from the least minutes, above zero
     * @param to the most minutes, not below the least
     * @param words what may, or must, be done then
     */
    public record Wait(int from, int to, String words) {}

    /**
     * A supply that a step takes.
     *
     * @param line its place, from 1
     * @param step the line of its step
     * @param typed the quantity as typed
     */
    public record Need(int line, int step, UUID supplyId, String typed, Coverage coverage) {}

    /** Minutes of work on one piece. */
    public int minutes() {
        return steps.stream().mapToInt(Step::minutes).sum();
    }

    /** The least minutes that are waited, all steps together. */
    public int waitFrom() {
        return steps.stream()
                .mapToInt(step -> step.pause() == null ? 0 : step.pause().from())
                .sum();
    }

    /** The most minutes that are waited, all steps together. */
    public int waitTo() {
        return steps.stream()
                .mapToInt(step -> step.pause() == null ? 0 : step.pause().to())
                .sum();
    }

    /** The ids of all cautions of its steps. */
    public List<String> cautions() {
        return steps.stream()
                .flatMap(step -> step.cautions().stream())
                .distinct()
                .toList();
    }

    /** The words of its steps, which may call up cautions of their own. */
    public List<String> words() {
        return steps.stream().map(Step::what).toList();
    }

    /** What a piece takes of a supply, all steps together; null where its surface must be known and is not. */
    public @Nullable BigDecimal quantity(UUID supply, @Nullable BigDecimal area) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Need need : needs) {
            if (need.supplyId().equals(supply)) {
                BigDecimal one = need.coverage().forPiece(area).orElse(null);
                if (one == null) {
                    return null;
                }
                sum = sum.add(one);
            }
        }
        return sum;
    }

    /** The supplies, each once, in the order of the needs. */
    public List<UUID> supplies() {
        return needs.stream().map(Need::supplyId).distinct().toList();
    }
}
