package patinary.ledger;

import java.util.List;

/** Something kept beside the books that {@link Check} looks at too. */
public interface AlsoChecked {

    /** What is not as the books say; empty where all is right. Changes nothing. */
    List<Finding> findings();
}
