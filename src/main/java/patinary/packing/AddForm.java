package patinary.packing;

import java.util.ArrayList;
import java.util.List;

/** Pieces to be put on a list, by a tick or by their codes. */
class AddForm {

    public List<String> pieces = new ArrayList<>();
    public String codes = "";
}
