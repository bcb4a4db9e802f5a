package patinary.history;

/** The road on which a change came. */
enum CameBy {
    FORM,
    PHONE,
    FILE,
    COMMAND,
    UNDO
}
