package patinary.shop;

/** What a person may do. */
public enum Role {
    /** Everything. */
    OWNER,
    /** Records what happens and looks at what there is; sees no costs, no profit, no year and no settings. */
    HELPER,
    /** Reads the years and their files, and nothing else. */
    ACCOUNTANT
}
