package patinary.ledger;

/** How something is paid. */
public enum Way {
    /** From or into a money place. */
    PLACE,
    /** Not yet: it stays owed. */
    OWED,
    /** With credit that a source holds for her, or that she gave a buyer. */
    STORE_CREDIT,
    /** With what the buyer paid ahead. */
    DEPOSIT,
    /** By the owner herself: a gift, her own stash, her own pocket. */
    OWNER
}
