package patinary.finishes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import patinary.measure.Coverage;
import patinary.supplies.SupplyCatalog;
import patinary.supplies.SupplyMeasures;
import patinary.web.Answers;

/** Reads the form of a finish. What it gives back is to be used only where {@link Answers#anyWrong()} says no. */
final class FinishReading {

    private static final int NAME = 120;
    private static final int NOTE = 2000;
    private static final int WHAT = 500;
    private static final int WORDS = 120;
    private static final int TYPED = 80;

    /** Thirty days: the longest wait that sheets speak of is the hardening of a finish (common practice, no source). */
    private static final int LONGEST = 30 * 24 * 60;

    private final FinishForm form;
    private final Answers answers;
    private final Map<UUID, SupplyCatalog.Known> supplies;
    private final Set<String> cautions;
    /** The line of the step that the page shows under a number. */
    private final Map<String, Integer> lines = new HashMap<>();

    FinishReading(FinishForm form, Answers answers, List<SupplyCatalog.Known> supplies, Set<String> cautions) {
        this.form = form;
        this.answers = answers;
        this.supplies = supplies.stream().collect(Collectors.toMap(SupplyCatalog.Known::id, Function.identity()));
        this.cautions = cautions;
    }

    Finish finish() {
        String name = answers.text("name", form.name, NAME, "finishes.error.name");
        String note = answers.note("note", form.note, NOTE);
        List<Finish.Step> steps = steps();
        if (steps.isEmpty()) {
            answers.wrong("", "finishes.error.no-step");
        }
        return new Finish(name, note, steps, needs());
    }

    private List<Finish.Step> steps() {
        List<Finish.Step> steps = new ArrayList<>();
        for (int i = 0; i < form.steps.size(); i++) {
            if (!form.steps.get(i).isEmpty()) {
                steps.add(step("steps[" + i + "].", steps.size() + 1, form.steps.get(i)));
                lines.put(Integer.toString(i + 1), steps.size());
            }
        }
        return steps;
    }

    private Finish.Step step(String at, int number, FinishForm.StepLine line) {
        return new Finish.Step(
                number,
                answers.text(at + "what", line.what, WHAT, "finishes.error.what"),
                answers.whole(at + "minutes", line.minutes)
                        .filter(minutes -> fits(at + "minutes", minutes))
                        .orElse(0),
                wait(at, line),
                cautions(at + "cautions", line.cautions));
    }

    private Finish.@Nullable Wait wait(String at, FinishForm.StepLine line) {
        Optional<Integer> from = answers.whole(at + "waitFrom", line.waitFrom);
        Optional<Integer> to = answers.whole(at + "waitTo", line.waitTo);
        String words = answers.note(at + "waitWords", line.waitWords, WORDS);
        if (from.isEmpty() && (to.isPresent() || !words.isBlank())) {
            answers.wrong(at + "waitFrom", "finishes.error.wait");
        }
        if (from.isEmpty()) {
            return null;
        }
        int most = to.orElse(from.get());
        if (from.get() < 1 || most < from.get()) {
            answers.wrong(at + "waitTo", "finishes.error.wait-order");
        }
        fits(at + "waitTo", most);
        return new Finish.Wait(from.get(), most, words);
    }

    private boolean fits(String field, int minutes) {
        if (minutes > LONGEST) {
            answers.wrong(field, "finishes.error.long");
        }
        return minutes <= LONGEST;
    }

    private List<String> cautions(String field, String typed) {
        List<String> ids = Arrays.stream(
                        typed.toUpperCase(java.util.Locale.ROOT).split("[,;\\s]+"))
                .filter(id -> !id.isEmpty())
                .distinct()
                .toList();
        ids.stream()
                .filter(id -> !cautions.contains(id))
                .findFirst()
                .ifPresent(id -> answers.wrong(field, "finishes.error.caution", id));
        if (String.join(" ", ids).length() > 400) {
            answers.wrong(field, "finishes.error.cautions");
        }
        return ids;
    }

    private List<Finish.Need> needs() {
        List<Finish.Need> needs = new ArrayList<>();
        for (int i = 0; i < form.needs.size(); i++) {
            if (!form.needs.get(i).isEmpty()) {
                need("needs[" + i + "].", needs.size() + 1, form.needs.get(i)).ifPresent(needs::add);
            }
        }
        return needs;
    }

    private Optional<Finish.Need> need(String at, int number, FinishForm.NeedLine line) {
        UUID id = answers.id(at + "supply", line.supply, "finishes.error.supply");
        String typed = answers.note(at + "quantity", line.quantity, TYPED);
        Integer step = lines.get(line.step.strip());
        if (step == null) {
            answers.wrong(at + "step", "finishes.error.step");
        }
        Optional<Per> per = answers.word(at + "per", line.per, Per.class, "finishes.error.per");
        SupplyCatalog.Known supply = supplies.get(id);
        if (supply == null) {
            if (!line.supply.isBlank()) {
                answers.wrong(at + "supply", "finishes.error.supply");
            }
            return Optional.empty();
        }
        return answers.quantity(at + "quantity", typed, supply.facts().dimension(), SupplyMeasures.of(supply.facts()))
                .filter(quantity -> {
                    if (quantity.signum() <= 0) {
                        answers.wrong(at + "quantity", "finishes.error.nothing");
                    }
                    return quantity.signum() > 0 && step != null && per.isPresent();
                })
                .map(quantity -> new Finish.Need(
                        number,
                        step,
                        id,
                        typed,
                        new Coverage(quantity, per.orElseThrow().area())));
    }
}
