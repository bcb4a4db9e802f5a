package patinary.pieces;

import java.util.ArrayList;
import java.util.List;

/** A piece that becomes several. */
class SplitForm {

    /** One of the new pieces. */
    static class PartForm {

        public String title = "";
        public String weight = "";
    }

    public String id = "";
    public String date = "";
    public List<PartForm> parts = new ArrayList<>();
    public String note = "";
}
