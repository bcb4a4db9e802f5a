package patinary.opening;

import java.util.ArrayList;
import java.util.List;

/** What was there on the first day, as typed. */
class OpeningForm {

    /** The version that the form was drawn from; below zero where nothing was recorded yet. */
    public long version = -1;

    public List<PieceRow> pieces = new ArrayList<>();
    public List<SupplyRow> supplies = new ArrayList<>();
    public List<MoneyRow> money = new ArrayList<>();
    public List<OwedRow> owed = new ArrayList<>();
    public String odometer = "";
    public String lastClosing = "";
    public String note = "";

    /** A piece on the shelf; a known one has an id and keeps its own code and name. */
    static class PieceRow {

        public String pieceId = "";
        public String code = "";
        public String title = "";
        public String cost = "";
        public boolean unknown;

        boolean isEmpty() {
            return pieceId.isBlank() && code.isBlank() && title.isBlank() && cost.isBlank();
        }

        public boolean isStored() {
            return !pieceId.isBlank();
        }
    }

    /** What was left of a supply. */
    static class SupplyRow {

        public String supplyId = "";
        public String place = "BENCH";
        public String quantity = "";
        public String cost = "";
        public boolean about;

        boolean isEmpty() {
            return supplyId.isBlank() && quantity.isBlank() && cost.isBlank();
        }
    }

    /** What was in a money place. */
    static class MoneyRow {

        public String placeId = "";
        public String amount = "";
    }

    /** An amount owed either way. */
    static class OwedRow {

        public String account = "";
        public String partyId = "";
        public String title = "";
        public String amount = "";

        boolean isEmpty() {
            return account.isBlank() && partyId.isBlank() && title.isBlank() && amount.isBlank();
        }
    }
}
