package patinary.bench;

import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Service;
import patinary.bench.NowRows.LastUse;
import patinary.web.Answers;
import patinary.web.Ids;

/** What every button of the bench page but the main one does without script. None of them records an entry. */
@Service
class NowActs {

    private static final String WAIT_DONE = "wait-done-";
    private static final String AS_LAST = "as-last-";
    static final String STEP_WAIT = "step-wait-";

    private final NowClock clock;
    private final NowPast past;
    private final BenchFormPage page;
    private final BenchFinishes finishes;

    NowActs(NowClock clock, NowPast past, BenchFormPage page, BenchFinishes finishes) {
        this.clock = clock;
        this.past = past;
        this.page = page;
        this.finishes = finishes;
    }

    /** Any other word only draws the page again, with the pieces that were looked for or ticked. */
    void act(String act, String person, NowForm form, Answers answers) {
        switch (act) {
            case "clock-go" -> clock.go(person, form);
            case "clock-pause" -> clock.pause(person, form);
            case "clock-stop" -> clock.stop(person, form, answers);
            case "wait" -> clock.waitFor(person, form, answers);
            case "finish" -> page.fillIn(form, page.supplies(), page.chosen(form));
            default -> {
                if (act.startsWith(WAIT_DONE)) {
                    Ids.read(act.substring(WAIT_DONE.length())).ifPresent(wait -> clock.done(person, wait));
                } else if (act.startsWith(AS_LAST)) {
                    Ids.read(act.substring(AS_LAST.length())).ifPresent(style -> asLastTime(style, form));
                } else if (act.startsWith(STEP_WAIT)) {
                    finishes.step(form.finish, act.substring(STEP_WAIT.length()))
                            .ifPresent(step -> clock.waitAfter(person, step));
                }
            }
        }
    }

    /** Takes the supplies of the last time; what is tapped already stays as it is. */
    private void asLastTime(UUID style, NowForm form) {
        past.read().styles().stream()
                .filter(row -> row.value().equals(style))
                .flatMap(row -> row.last().stream())
                .forEach(last -> take(last, form));
    }

    private static void take(LastUse last, NowForm form) {
        if (last.tool()) {
            tick(last.supply().toString(), form);
            return;
        }
        int at = place(last.supply().toString(), form.uses);
        if (at == form.uses.size()) {
            form.uses.add(new BenchForm.UseLine());
        }
        BenchForm.UseLine line = form.uses.get(at);
        NowForm.Tap tap = form.tap(at);
        if (tap.picked && !line.supply.isBlank()) {
            return;
        }
        line.supply = last.supply().toString();
        line.quantity = last.typed();
        line.how = last.exact() ? "EXACT" : "EYE";
        tap.picked = true;
        tap.measure = "";
    }

    private static void tick(String tool, NowForm form) {
        if (!form.tools.contains(tool)) {
            form.tools.add(tool);
        }
    }

    /** The line of this supply; else the open one at the end; else one more. */
    private static int place(String supply, List<BenchForm.UseLine> lines) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).supply.equals(supply)) {
                return i;
            }
        }
        boolean open = !lines.isEmpty() && lines.get(lines.size() - 1).isEmpty();
        return open ? lines.size() - 1 : lines.size();
    }
}
