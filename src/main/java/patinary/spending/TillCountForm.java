package patinary.spending;

import java.util.ArrayList;
import java.util.List;

/** A count of a cash box, as typed: one total, or how many there are of each note and coin. */
class TillCountForm extends MoneyForm {

    /** One denomination: its value in minor units, and how many there are. */
    static class Heap {
        public String minor = "";
        public String number = "";
    }

    public String placeId = "";
    public String counted = "";
    public List<Heap> heaps = new ArrayList<>();
}
