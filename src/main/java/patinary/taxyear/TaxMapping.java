package patinary.taxyear;

/**
 * One change of what goes on which line.
 *
 * @param taxYear the first year it holds in
 * @param category empty for the whole account
 * @param meaning of the line, empty where it goes to none or as supplied
 * @param onward whether it holds in later years too, until another
 */
record TaxMapping(
        String taxTable, int taxYear, String account, String category, Goes goes, String meaning, boolean onward) {

    /** Where it goes. */
    enum Goes {
        LINE,
        NOWHERE,
        SUPPLIED
    }

    String key() {
        return TaxTable.key(account, category);
    }

    /** The same in another year. */
    TaxMapping in(int year, boolean andLater) {
        return new TaxMapping(taxTable, year, account, category, goes, meaning, andLater);
    }

    boolean isOf(String table, String key) {
        return taxTable.equals(table) && key().equals(key);
    }
}
