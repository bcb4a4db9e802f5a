package patinary.shop;

/** What she aims at, as typed. */
class AimsForm {

    public long version;
    public String horizonDays = "";
    public String salvage = "";
    public String targetKind = "AMOUNT";
    public String target = "";
    public String targetReturn = "";
    public String purchaseTax = "";
    public String priceEndings = "";
}
