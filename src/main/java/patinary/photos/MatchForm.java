package patinary.photos;

import java.util.ArrayList;
import java.util.List;

/** Which of the waiting photos belong to which piece. */
class MatchForm {

    /** The ids of the photos that are ticked. */
    public List<String> photo = new ArrayList<>();

    public String stage = Stage.BEFORE.name();
    public String q = "";

    /** The piece whose button was pressed. */
    public String to = "";

    public String action = "";
}
