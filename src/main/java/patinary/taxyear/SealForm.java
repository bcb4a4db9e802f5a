package patinary.taxyear;

/** What is asked before a year is sealed. */
class SealForm {

    public boolean sure;

    /** That the year may be sealed although something is open. */
    public boolean nonetheless;

    public String note = "";
}
