package patinary.mixes;

/** What is wanted, as typed. */
class MixForm {

    public String wanted = "";
    public String first = "1";
    public String second = "1";
    public String makes = "75";
    public String additive = "";
    public String amount = "";

    /** The supply to start a bench entry with. */
    public String supply = "";

    boolean isAsked() {
        return !wanted.isBlank();
    }
}
