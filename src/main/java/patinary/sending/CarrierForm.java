package patinary.sending;

import java.util.ArrayList;
import java.util.List;

/** A carrier's service with its table as typed. */
class CarrierForm {
    public String id = "";
    public long version;
    public String name = "";
    public String place = "";
    public List<Line> lines = new ArrayList<>();

    /** A row of the table; one without weight and cost is no row. */
    static class Line {
        public String from = "";
        public String upTo = "";
        public String size = "";
        public String cost = "";

        boolean isBlank() {
            return upTo.isBlank() && size.isBlank() && cost.isBlank();
        }
    }
}
