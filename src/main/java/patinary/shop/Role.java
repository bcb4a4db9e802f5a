package patinary.shop;

/** What a person may do. */
public enum Role {
    /** Everything. */
    OWNER,
    /** Reads and records, but does not change the shop's settings. */
    HELPER,
    /** Reads the years and their files, and nothing else. */
    ACCOUNTANT
}
