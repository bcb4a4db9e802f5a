package patinary.finishes;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** A finish, as typed. */
class FinishForm {

    /** A step. */
    static class StepLine {
        public String what = "";
        public String minutes = "";
        public String waitFrom = "";
        public String waitTo = "";
        public String waitWords = "";
        public String cautions = "";

        boolean isEmpty() {
            return (what + minutes + waitFrom + waitTo + waitWords + cautions).isBlank();
        }
    }

    /** A supply; {@code step} is the number of its step as the page counts them. */
    static class NeedLine {
        public String step = "1";
        public String supply = "";
        public String quantity = "";
        public String per = Per.SQUARE_FOOT.name();

        boolean isEmpty() {
            return supply.isBlank() && quantity.isBlank();
        }
    }

    public String id = UUID.randomUUID().toString();
    public long version;
    public String name = "";
    public String note = "";
    public List<StepLine> steps = new ArrayList<>();
    public List<NeedLine> needs = new ArrayList<>();

    static FinishForm empty() {
        FinishForm form = new FinishForm();
        form.steps.add(new StepLine());
        form.needs.add(new NeedLine());
        return form;
    }

    static FinishForm of(FinishBook.Kept kept) {
        FinishForm form = new FinishForm();
        form.id = kept.id().toString();
        form.version = kept.version();
        form.name = kept.finish().name();
        form.note = kept.finish().note();
        kept.finish().steps().forEach(step -> form.steps.add(line(step)));
        kept.finish().needs().forEach(need -> form.needs.add(line(need)));
        return form;
    }

    private static StepLine line(Finish.Step step) {
        StepLine line = new StepLine();
        line.what = step.what();
        line.minutes = step.minutes() == 0 ? "" : Integer.toString(step.minutes());
        Finish.Wait wait = step.pause();
        if (wait != null) {
            line.waitFrom = Integer.toString(wait.from());
            line.waitTo = wait.to() == wait.from() ? "" : Integer.toString(wait.to());
            line.waitWords = wait.words();
        }
        line.cautions = String.join(", ", step.cautions());
        return line;
    }

    private static NeedLine line(Finish.Need need) {
        NeedLine line = new NeedLine();
        line.step = Integer.toString(need.step());
        line.supply = need.supplyId().toString();
        line.quantity = need.typed();
        line.per = Per.of(need.coverage().perArea()).name();
        return line;
    }
}
