package patinary.exchange;

/** What a cell of the archive holds, and so how it is written; docs/handbook/archive.md. */
enum Type {
    /** Free text; guarded against being taken for a formula, see {@link SafeText}. */
    TEXT,
    /** A plain decimal in the shop's currency, with all its decimals. */
    AMOUNT,
    /** An amount for one mile: a plain decimal in the shop's currency with one more decimal than it has. */
    RATE,
    /** An exact decimal, in the supply's base unit where it is a quantity. */
    DECIMAL,
    /** A percentage: 8.25 means 8.25 of a hundred. */
    PERCENT,
    WHOLE,
    /** A local calendar date (ISO 8601). */
    DATE,
    /** An instant in UTC (RFC 3339). */
    MOMENT,
    YES_NO,
    /** A permanent id (RFC 9562 UUID). */
    ID,
    /** One of a few fixed words. */
    WORD
}
