package patinary.phone;

import java.util.UUID;

/**
 * The receipt of an entry, after which the phone may forget it.
 *
 * @param key the entry's id
 * @param href where it is seen
 * @param words what was stored
 */
record Receipt(UUID key, String href, String words) {}
