package patinary.asking;

import java.util.ArrayList;
import java.util.List;

/** What a price is asked for, as it stands in the address; the rest of an offer that is being typed travels along. */
class AskingForm {

    /** Codes of the pieces; several are a set. */
    public String codes = "";

    /** Shipping charged and money spent on the sale, where they are not the usual ones of each channel. */
    public String shipping = "";

    public String outlay = "";

    /** An offer that stands already, whose price is to change; empty for a new one. */
    public String offer = "";

    public String weights = "";
    public String title = "";
    public String date = "";
    public String note = "";
    public List<String> channels = new ArrayList<>();
}
