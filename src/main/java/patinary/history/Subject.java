package patinary.history;

import java.util.UUID;

/**
 * What a change is about.
 *
 * @param kind the table of the shop archive that it is a row of
 */
record Subject(String kind, UUID id) {}
