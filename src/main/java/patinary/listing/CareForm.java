package patinary.listing;

import java.util.ArrayList;
import java.util.List;

/** Her words for the lines of care as typed, and a line of her own. */
class CareForm {
    public List<Line> lines = new ArrayList<>();
    public String of = "";
    public String words = "";

    /** Her words for one of the program's lines; empty for the program's own. */
    static class Line {
        public String id = "";
        public String words = "";
        public boolean leftOut;
    }
}
