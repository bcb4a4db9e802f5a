package patinary.shelflife;

import java.util.ArrayList;
import java.util.List;

/** The days of a supply's lots, as typed. */
class LotForm {

    /** One lot. */
    static class Line {
        public String document = "";
        public String opened = "";
        public String useBy = "";
    }

    public List<Line> lots = new ArrayList<>();
}
