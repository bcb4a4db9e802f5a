package patinary.ledger;

import java.util.List;

/** A document could not be recorded, changed or removed; nothing was stored. */
public class Refused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    Refused(List<Problem> problems) {
        super("Refused: " + problems);
        this.problems = problems;
    }

    public List<Problem> problems() {
        return problems;
    }
}
