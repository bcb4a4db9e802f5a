package patinary.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import patinary.pieces.PiecePicks;

/** A bench entry, as typed. The id is made with the form, so that a form sent twice is one entry. */
class BenchForm extends PiecePicks {

    /** A supply that was used. */
    static class UseLine {
        public String supply = "";
        public String quantity = "";
        public String how = "EYE";
        public String share = ShareMode.EQUAL.name();
        /** Ids of the only pieces it went on; empty for all of the entry. */
        public List<String> only = new ArrayList<>();

        public List<Part> parts = new ArrayList<>();

        boolean isEmpty() {
            return supply.isBlank() && quantity.isBlank();
        }
    }

    /** A typed weight of one piece in one use. */
    static class Part {
        public String piece = "";
        public String weight = "";
    }

    /** Something that went wrong. */
    static class MishapLine {
        public String piece = "";
        public String supply = "";
        public String surface = "";
        public String what = "";
        public String preparation = "";
        public String reworkedIn = "";

        boolean isEmpty() {
            return what.isBlank()
                    && surface.isBlank()
                    && piece.isBlank()
                    && supply.isBlank()
                    && preparation.isBlank()
                    && reworkedIn.isBlank();
        }
    }

    public String id = UUID.randomUUID().toString();
    public long version;
    public String day = DayChoice.TODAY.name();
    public String date = "";
    public List<String> ready = new ArrayList<>();
    /** Id of the finish that is followed, or an empty text. */
    public String finish = "";

    /** Ids of the tools that were used once. */
    public List<String> tools = new ArrayList<>();

    public String minutes = "";
    public String done = "";
    public String note = "";
    public List<UseLine> uses = new ArrayList<>();
    public List<MishapLine> mishaps = new ArrayList<>();
    public HandlingForm handling = new HandlingForm();

    /** The weight lines of every use follow the chosen pieces, keeping what was typed. */
    void fitParts(List<UUID> chosen) {
        List<UseLine> all = new ArrayList<>(uses);
        all.addAll(handling.cuts);
        all.addAll(handling.pots);
        for (UseLine use : all) {
            List<Part> old = use.parts;
            use.parts = new ArrayList<>();
            for (UUID piece : chosen) {
                use.parts.add(old.stream()
                        .filter(part -> part.piece.equals(piece.toString()))
                        .findFirst()
                        .orElseGet(() -> part(piece)));
            }
        }
    }

    private static Part part(UUID piece) {
        Part part = new Part();
        part.piece = piece.toString();
        return part;
    }
}
