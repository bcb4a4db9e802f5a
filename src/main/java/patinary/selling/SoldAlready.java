package patinary.selling;

import java.time.LocalDate;
import java.util.UUID;

/** Another sale that a piece went with; the price is what its line came to. */
record SoldAlready(UUID saleId, LocalDate docDate, String code, long priceMinor) {}
