package patinary.taxyear;

/** What is asked before a seal is taken off. */
class TakeOffForm {

    public String reason = "";

    /** The owner's password, typed anew; never shown again. */
    public String password = "";
}
