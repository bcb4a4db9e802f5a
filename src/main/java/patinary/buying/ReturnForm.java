package patinary.buying;

import java.util.ArrayList;
import java.util.List;
import patinary.ledger.StockPlace;
import patinary.pieces.PiecePicks;

/** A return to a supplier as typed. */
class ReturnForm extends PiecePicks {

    public String id = "";
    /** The receipt whose pieces are offered and on which less may be owed, or empty. */
    public String receipt = "";

    public String date = "";
    public String source = "";
    public List<SupplyRow> supplies = new ArrayList<>();
    public String amount = "";
    public String way = "";
    public String note = "";

    /** A supply that went back, as typed. */
    static class SupplyRow {
        public String supply = "";
        public String place = StockPlace.BENCH.name();
        public String quantity = "";

        boolean isEmpty() {
            return supply.isBlank();
        }
    }
}
