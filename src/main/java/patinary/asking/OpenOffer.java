package patinary.asking;

import java.time.LocalDate;
import java.util.UUID;

/** A live offer that is to be had today. */
record OpenOffer(UUID offerId, String title, LocalDate startedOn, long firstPriceMinor, long priceMinor) {}
