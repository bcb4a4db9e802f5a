package patinary.selling;

import java.util.ArrayList;
import java.util.List;

/** A refund as typed: one line for each thing of the sale, in the order of the page. */
class RefundForm {

    static class Line {
        public String thing = "";
        public String amount = "";
        /** Of a piece: whether it comes back into stock. */
        public boolean comesBack;
        /** Of a piece: whether it was never sent, because the order was cancelled. */
        public boolean never;
        /** Of a supply: empty where it stays with the buyer; SHELF or LOST where it was sent back. */
        public String back = "";

        public String quantity = "";
    }

    public String id = "";
    public String date = "";
    public String note = "";
    public List<Line> lines = new ArrayList<>();
    public String shipping = "";
    public String tax = "";
    public String feeBack = "";
    public String way = "PLACE";
    public String place = "";

    /** Whether the buyer takes something else for it at once. */
    public boolean exchange;
}
