package patinary.asking;

import java.util.ArrayList;
import java.util.List;

/** The suggestions as they come back, with those that are ticked. */
class MarkDownForm {

    /** One suggestion. */
    static class Row {
        public String offer = "";

        /** The price that was asked when the page was drawn, in minor units. */
        public String before = "";

        public boolean take;
        public String price = "";
    }

    public List<Row> rows = new ArrayList<>();
}
