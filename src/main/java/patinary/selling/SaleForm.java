package patinary.selling;

import java.util.ArrayList;
import java.util.List;
import patinary.pieces.PieceSearch;

/** A sale as typed. */
class SaleForm extends PieceSearch {

    /** One line as typed: pieces by their codes, a supply from the retail shelf, or a bundle of supplies. */
    static class Line {
        public String title = "";
        public String codes = "";
        public String weights = "";
        public String supply = "";
        public String bundle = "";
        /** The bundle's number on the sale, where the sale has it already. */
        public String sold = "";

        public String quantity = "";
        public String content = "";
        public String price = "";
        public String discount = "";

        boolean isEmpty() {
            return codes.isBlank() && supply.isBlank() && bundle.isBlank() && title.isBlank() && price.isBlank();
        }

        public boolean isRetail() {
            return !supply.isBlank();
        }

        public boolean isBundled() {
            return !bundle.isBlank();
        }
    }

    public String id = "";
    public long version;
    public String date = "";
    public String channel = "";
    public String buyer = "";
    public String order = "";
    public String note = "";
    public List<Line> lines = new ArrayList<>();
    public String addOffer = "";
    public String addPiece = "";
    public String addSupply = "";
    public String addBundle = "";
    public String discount = "";
    public String shipping = "";
    /** Empty: by the rate of the place, where one holds. */
    public String tax = "";
    /** Empty: as the channel does it; SHOP or CHANNEL otherwise. */
    public String taxBy = "";
    /** Empty: the channel's usual one; NONE, or the place's id. */
    public String taxPlace = "";

    public String discountCode = "";
    public String tip = "";
    /** Empty: by the channel's rule. */
    public String fee = "";
    /** Empty: the channel's own place. */
    public String place = "";

    public String deposit = "";
    public String credit = "";
    public String owed = "";
    /** Which order gets what was sold twice: THIS or OTHER. */
    public String twiceKeep = "";

    public String twiceDate = "";
    public String twiceFeeBack = "";
    /** Empty: where the buyer's money came in. */
    public String twicePlace = "";
    /** What it was packed in; may stay empty. */
    public List<WrapLine> wraps = new ArrayList<>();
}
