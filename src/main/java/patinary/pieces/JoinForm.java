package patinary.pieces;

import java.util.ArrayList;
import java.util.List;

/** Pieces that become one. */
class JoinForm {

    public String id = "";
    public String date = "";
    public List<String> pieces = new ArrayList<>();

    /** The piece that the others become part of; empty for a new one. */
    public String into = "";

    public String title = "";
    public String note = "";
}
