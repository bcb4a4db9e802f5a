package patinary.demo;

/** What she said about her tax years; invented. */
final class YearEnds {

    private final State shop;

    YearEnds(State shop) {
        this.shop = shop;
    }

    /** The first year is as the books have it; from the second on she counts what she received and paid. */
    void write() {
        shop.rows.add("tax_basis", 2026, "CASH", "WHEN_USED", "As the preparer advised (invented)");
        shop.rows.add("tax_mapping", "us-schedule-c", 2026, "EXPENSE", "software", "LINE", "other_expenses", true);
    }
}
