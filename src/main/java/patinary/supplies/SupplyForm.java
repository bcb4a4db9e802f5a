package patinary.supplies;

import java.util.ArrayList;
import java.util.List;

/** A supply, as typed. */
class SupplyForm {

    /** A pack or a measure of her own. */
    static class Line {
        public String name = "";
        public String quantity = "";

        boolean isEmpty() {
            return name.isBlank() && quantity.isBlank();
        }
    }

    public long version;
    public String line = "";
    public String newLine = "";
    public String newMaker = "";
    public String name = "";
    public String dimension = "";
    public String retailPrice = "";
    public String low = "";
    public String emptyGrams = "";
    public String gramsPerMl = "";
    public List<Line> packs = new ArrayList<>();
    public List<Line> measures = new ArrayList<>();
    public String sheet = "";
    /** Name and size of each motif. */
    public List<Line> motifs = new ArrayList<>();

    public String daysOpened = "";
    public String daysMixed = "";
    public String most = "";
    public String mostNote = "";

    /** NONE, or one of {@link Wear}. */
    public String wear = NO_TOOL;
    /** How many uses a tool is thought to last. */
    public String uses = "";

    static final String NO_TOOL = "NONE";

    static SupplyForm fresh() {
        SupplyForm form = new SupplyForm();
        form.packs.add(new Line());
        form.measures.add(new Line());
        form.motifs.add(new Line());
        return form;
    }
}
