package patinary.backup;

/** The plan as it is typed. */
class PlanForm {

    public boolean byItself;
    public String folder = "";
    public String atHour = "";
    public String keep = "";
    public String warnAfterDays = "";

    static PlanForm of(BackupPlan plan) {
        PlanForm form = new PlanForm();
        form.byItself = plan.byItself();
        form.folder = plan.folder();
        form.atHour = String.valueOf(plan.atHour());
        form.keep = String.valueOf(plan.keep());
        form.warnAfterDays = String.valueOf(plan.warnAfterDays());
        return form;
    }
}
