package patinary.asking;

import java.util.ArrayList;
import java.util.List;

/** What is due, as it comes back with what is ticked. */
class ChargesForm {

    /** One charge. */
    static class Row {
        public String key = "";
        public boolean take;
        public String amount = "";
    }

    public List<Row> rows = new ArrayList<>();
}
