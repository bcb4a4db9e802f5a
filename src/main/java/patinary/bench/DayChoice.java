package patinary.bench;

/** The day of the work, chosen with one tap or typed. */
enum DayChoice {
    TODAY,
    YESTERDAY,
    OTHER
}
