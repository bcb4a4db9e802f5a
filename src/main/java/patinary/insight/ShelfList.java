package patinary.insight;

import java.util.Arrays;
import java.util.Optional;

/** The lists of the front page, in its order, each named by the word under which the view keeps its rows. */
enum ShelfList {
    BENCH("bench", Group.DO, false, ""),
    READY("ready", Group.DO, false, ""),
    TO_POST("to-post", Group.DO, true, "sales#words"),
    LOW("low", Group.DO, false, ""),
    UNCOSTED("uncosted", Group.DO, false, "costing#uses-before-their-receipt"),
    NO_COST("no-cost", Group.DO, false, "receipts"),
    FOUND("found", Group.DO, false, ""),
    SOLD("sold", Group.MONEY, true, "what-moves#net-sales"),
    OWED_TO("owed-to", Group.MONEY, true, "sales"),
    OWED_BY("owed-by", Group.MONEY, true, "receipts"),
    TIED_PIECES("tied-pieces", Group.TIED, true, "money-by-group#tied-up"),
    TIED_BENCH("tied-bench", Group.TIED, true, "costing"),
    TIED_SHELF("tied-shelf", Group.TIED, true, "costing#retail");

    /** Where on the front page a list stands. */
    enum Group {
        DO,
        MONEY,
        TIED
    }

    private final String word;
    private final Group group;
    private final boolean money;
    private final String handbook;

    ShelfList(String word, Group group, boolean money, String handbook) {
        this.word = word;
        this.group = group;
        this.money = money;
        this.handbook = handbook;
    }

    static Optional<ShelfList> of(String word) {
        return Arrays.stream(values()).filter(list -> list.word.equals(word)).findFirst();
    }

    public String word() {
        return word;
    }

    public Group group() {
        return group;
    }

    /** Whether it says what is to be done, and nothing of what things cost or bring. */
    public boolean isWork() {
        return group == Group.DO && this != UNCOSTED && this != NO_COST;
    }

    /** Where the handbook says how its figure is reckoned; empty where nothing is but counted. */
    public String handbook() {
        return handbook.isEmpty() ? "" : "/handbook/" + handbook;
    }

    /** Whether its figure is an amount; of the others it is how many there are. */
    public boolean money() {
        return money;
    }
}
