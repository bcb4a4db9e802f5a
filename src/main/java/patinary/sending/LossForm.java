package patinary.sending;

/** What went wrong in the mail as typed. */
class LossForm {
    public String id = "";
    public long version;
    public String what = "LOST";
    public String noticedOn = "";
    public String words = "";
    public String claimedOn = "";
    public String claimed = "";
    public String reference = "";
    public String refusedOn = "";
}
