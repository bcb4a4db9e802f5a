package patinary.discounts;

/** A code as typed. */
class DiscountForm {
    public String id = "";
    public long version;
    public String code = "";
    public String percent = "";
    public String amount = "";
    public String validFrom = "";
    public String validTo = "";
    public String note = "";
}
