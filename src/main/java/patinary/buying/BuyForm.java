package patinary.buying;

import java.util.ArrayList;
import java.util.List;

/** A purchase as recorded while walking the aisle. */
class BuyForm {

    /** As many things as one purchase takes here; the long form takes no more either. */
    static final int MOST_THINGS = FormEdits.MOST_LINES;

    public String id = "";
    public String day = ReceiptForm.TODAY;
    /** A typed date goes before the day; the script of the page always sends one. */
    public String date = "";

    public String source = "";
    public String newSource = "";
    public String paidWith = "";
    /** What the till adds to the things, as a percentage; empty where the source's own is meant. */
    public String tax = "";

    public String tillTotal = "";
    /** What the difference to the till's total is: TAX, ROUNDING, DISCOUNT, TOTAL or OPEN; empty where there is none. */
    public String settle = "";
    /** The difference that the answer was given for, where a phone worked it out. */
    public String settled = "";

    public List<Thing> things = new ArrayList<>();

    /** One thing, or several of the same, as typed. */
    static class Thing {
        /** The id that the phone gave its piece. */
        public String piece = "";

        public String price = "";
        /** One of her own percentages; empty for the full price. */
        public String percent = "";
        /** A percentage that is none of hers, which goes before. */
        public String otherPercent = "";

        public String kind = "";
        public String style = "";
        public String what = "";
        /** PIECES, HOME or CHARITY. */
        public String use = LineKind.PIECES.name();

        public String count = "1";
        /** Whether the price is for all of them. */
        public boolean together;

        boolean isEmpty() {
            return price.isBlank() && what.isBlank();
        }
    }
}
