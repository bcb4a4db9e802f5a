package patinary.taxbasis;

/**
 * How one year is counted for tax.
 *
 * @param income when income counts
 * @param supplies when the cost of supplies counts
 */
public record TaxBasis(Income income, Supplies supplies) {

    /** As the books have it: nothing differs. */
    public static final TaxBasis AS_BOOKS = new TaxBasis(Income.SALE_DATE, Supplies.WHEN_USED);

    /** When income counts. */
    public enum Income {
        SALE_DATE,
        CASH
    }

    /** When the cost of supplies counts. */
    public enum Supplies {
        WHEN_USED,
        WHEN_BOUGHT
    }

    boolean cash() {
        return income == Income.CASH;
    }

    boolean whenBought() {
        return supplies == Supplies.WHEN_BOUGHT;
    }

    /** The message that names it. */
    public String key() {
        return "taxbasis.basis." + income + "." + supplies;
    }
}
