package patinary.taxyear;

/** What is asked before a year is sealed. */
class SealForm {

    public boolean sure;
    public String note = "";
}
