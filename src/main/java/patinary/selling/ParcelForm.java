package patinary.selling;

import java.util.ArrayList;
import java.util.List;

/** One of her ways of packing as typed. */
class ParcelForm {
    public String id = "";
    public long version;
    public String name = "";
    public List<WrapLine> wraps = new ArrayList<>();
}
