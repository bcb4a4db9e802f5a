package patinary.taxyear;

/** What is asked before a seal is taken off. */
class TakeOffForm {

    public String reason = "";
}
