package patinary.selling;

import java.util.ArrayList;
import java.util.List;

/** A channel as typed. */
class ChannelForm {

    /** A fee rule as typed; a row left empty is none. */
    static class Rule {
        public String validFrom = "";
        public String percent = "";
        public String fixed = "";

        boolean isEmpty() {
            return validFrom.isBlank() && percent.isBlank() && fixed.isBlank();
        }
    }

    public String id = "";
    public long version;
    public String name = "";
    public boolean passesTax;
    public String place = "";
    public String newPlace = "";
    public List<Rule> rules = new ArrayList<>();
}
