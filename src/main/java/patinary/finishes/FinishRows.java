package patinary.finishes;

/** Drops a step or a supply of the form and keeps the supplies with their steps. */
final class FinishRows {

    private static final String DROP_STEP = "drop-step-";
    private static final String DROP_NEED = "drop-need-";
    private static final String UP = "up-";

    private FinishRows() {}

    /** An act that is none of these changes nothing. */
    static void rearrange(FinishForm form, String act) {
        if (act.startsWith(DROP_STEP)) {
            dropStep(form, place(act, DROP_STEP));
        } else if (act.startsWith(UP)) {
            up(form, place(act, UP));
        } else if (act.startsWith(DROP_NEED)) {
            int at = place(act, DROP_NEED);
            if (at >= 0 && at < form.needs.size()) {
                form.needs.remove(at);
            }
        }
    }

    /** Its supplies go to the step before it, the others follow their steps. */
    private static void dropStep(FinishForm form, int at) {
        if (at < 0 || at >= form.steps.size()) {
            return;
        }
        form.steps.remove(at);
        for (FinishForm.NeedLine need : form.needs) {
            int step = place(need.step, "");
            if (step > at) {
                need.step = Integer.toString(Math.max(1, step - 1));
            }
        }
    }

    private static void up(FinishForm form, int at) {
        if (at < 1 || at >= form.steps.size()) {
            return;
        }
        form.steps.add(at - 1, form.steps.remove(at));
        for (FinishForm.NeedLine need : form.needs) {
            int step = place(need.step, "");
            if (step == at || step == at + 1) {
                need.step = Integer.toString(step == at ? at + 1 : at);
            }
        }
    }

    private static int place(String act, String prefix) {
        String number = act.substring(prefix.length());
        return number.matches("\\d{1,4}") ? Integer.parseInt(number) : -1;
    }
}
