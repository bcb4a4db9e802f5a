package patinary.ledger;

import java.util.List;

/** A document as costing sees it. */
public record DocumentMoves(DocumentRef document, List<Move> moves) {}
