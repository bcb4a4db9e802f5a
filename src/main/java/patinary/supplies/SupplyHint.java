package patinary.supplies;

import java.util.List;
import java.util.UUID;

/** Sentences that another part of the program has to say on the page of a supply. */
public interface SupplyHint {

    /** What there is to say, in the reader's words; empty where there is nothing. */
    List<String> about(UUID supply);
}
