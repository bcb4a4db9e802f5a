package patinary.bringing;

import java.util.ArrayList;
import java.util.List;

/** What rows of a file are, as typed. */
class RowsForm {

    /** One row: an answer picked from those offered, or the codes of pieces typed instead. */
    static class Line {
        public String row = "";
        public String pick = "";
        public String codes = "";
    }

    public List<Line> rows = new ArrayList<>();
}
