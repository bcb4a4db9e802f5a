package patinary.buying;

import java.util.ArrayList;
import java.util.List;

/** The suggestions of a slip's photo, and which of them are ticked. */
class SlipForm {

    public String source = "";
    public String newSource = "";
    public String date = "";
    public String tax = "";
    public boolean takeTax;
    public String discount = "";
    public boolean takeDiscount;
    public String total = "";
    public boolean takeTotal;
    public List<Row> lines = new ArrayList<>();

    /** One line of the slip. */
    static class Row {
        public boolean take;
        public String title = "";
        public String quantity = "1";
        public String price = "";
        public String discount = "";
    }
}
