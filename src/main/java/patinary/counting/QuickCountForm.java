package patinary.counting;

import java.util.UUID;

/** One supply counted, as tapped or typed. */
class QuickCountForm {
    public String id = UUID.randomUUID().toString();
    public String supply = "";
    /** Empty for today. */
    public String date = "";
    /** The pack whose containers are counted; empty for the smallest. */
    public String pack = "";
    /** How many quarters of the open container are left. */
    public String quarters = "";
    /** How many full containers stand beside it. */
    public String whole = "";
    /** What an open container weighs with what is in it. */
    public String gross = "";
    /** How much is left, typed. */
    public String quantity = "";

    public String settle = "SHARE";
    public String note = "";
}
