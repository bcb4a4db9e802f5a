package patinary.selling;

import java.util.ArrayList;
import java.util.List;

/** A set that is taken apart, as typed. */
class SplitForm {

    /** Below zero until the page has been drawn. */
    public long version = -1;

    public String date = "";
    public List<Part> parts = new ArrayList<>();

    /** One piece of it; an empty price leaves it without an offer. */
    static class Part {
        public String piece = "";
        public String price = "";
    }
}
