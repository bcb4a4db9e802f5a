package patinary.selling;

import java.util.ArrayList;
import java.util.List;

/** What a sale that is recorded was packed in, as typed. */
class PackForm {
    public long version;
    public List<WrapLine> wraps = new ArrayList<>();
}
