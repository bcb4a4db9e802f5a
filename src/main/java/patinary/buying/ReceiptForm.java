package patinary.buying;

import java.util.ArrayList;
import java.util.List;

/** A receipt as typed. */
class ReceiptForm {

    static final String TODAY = "TODAY";
    static final String YESTERDAY = "YESTERDAY";
    static final String OTHER = "OTHER";

    public String id = "";
    public long version;
    /** One of the three words above; a typed date goes before it. */
    public String day = TODAY;

    public String date = "";
    public String source = "";
    public String newSource = "";
    public String trip = "";
    public String note = "";
    public String tillTotal = "";
    public String rounding = "";
    /** How the total, or what further payments leave of it, was paid; see {@link PaidWith}. */
    public String paidWith = "";

    /** The photo it was read from, or empty; it is given to the receipt once that is stored. */
    public String photo = "";

    public List<LineForm> lines = new ArrayList<>();
    public List<ChargeForm> charges = new ArrayList<>();
    public List<PaymentForm> payments = new ArrayList<>();

    /** One line as typed. */
    static class LineForm {
        public String kind = "PIECES";
        public String title = "";
        public String price = "";
        public String quantity = "1";
        /** An amount, or a percentage with its sign. */
        public String discount = "";

        public boolean about;
        /** A supply's id, followed by a stroke and the name of a pack where one was chosen. */
        public String supply = "";

        public String content = "";
        public String category = "";
        public String pieceCount = "";
        public List<PieceForm> pieces = new ArrayList<>();

        boolean isEmpty() {
            return title.isBlank() && price.isBlank() && supply.isBlank() && pieces.isEmpty();
        }
    }

    /** A piece of a line as typed. */
    static class PieceForm {
        public String id = "";
        public String title = "";
        public String kind = "";
        public String style = "";
        public String value = "";
    }

    /** Something added or taken off as typed. */
    static class ChargeForm {
        public String kind = "TAX";
        public String title = "";
        /** An amount, or a percentage with its sign. */
        public String value = "";

        public boolean taxed;
        public boolean afterTax;
        /** Positions of the lines it applies to, from 1; none for all. */
        public List<Integer> lines = new ArrayList<>();

        boolean isEmpty() {
            return value.isBlank();
        }
    }

    /** A further way of paying as typed. */
    static class PaymentForm {
        public String with = "";
        public String amount = "";

        boolean isEmpty() {
            return with.isBlank() && amount.isBlank();
        }
    }
}
