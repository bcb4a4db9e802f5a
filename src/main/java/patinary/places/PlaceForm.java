package patinary.places;

import java.util.ArrayList;
import java.util.List;

/** Pieces, chosen by a tick or by their codes, and the place they go to. */
class PlaceForm {

    public String place = "";
    public String codes = "";
    public List<String> pieces = new ArrayList<>();
    /** The code whose page the form stands on, to go back to; empty elsewhere. */
    public String from = "";
}
