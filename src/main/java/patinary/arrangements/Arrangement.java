package patinary.arrangements;

/** Why a piece of somebody else is with her. */
enum Arrangement {
    /** She works on it for its owner, who pays for the work. */
    COMMISSION,
    /** She sells it for its owner, who gets a share of the price. */
    CONSIGNED
}
