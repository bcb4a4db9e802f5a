package patinary.spending;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A vehicle that is driven for the shop.
 *
 * @param inService the first day it was used for the shop; null while that is not known
 */
record Vehicle(UUID id, String name, @Nullable LocalDate inService, String note, long version) {}
