package patinary.salestax;

/** A place of sales tax, its name or one more rate, as typed. */
class TaxPlaceForm {

    public String id = "";
    public long version;
    public String name = "";
    public String validFrom = "";
    public String percent = "";
    public boolean shippingTaxed;
}
