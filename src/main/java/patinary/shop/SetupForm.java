package patinary.shop;

import patinary.ledger.StockMethod;
import patinary.web.Tongue;

/** The answers of the setup page, as typed. */
class SetupForm {

    public String code = "";
    public String ownerName = "";
    public String password = "";
    public String shopName = "";
    public String currency = "USD";
    public String taxTable = "us-schedule-c";
    public String hourlyRate = "";
    public String costingMethod = StockMethod.FIFO.name();
    public String firstDay = "";
    public String timeZone = "";
    public String language = Tongue.ENGLISH.code();
    public String country = "US";
    public String next = "later";
}
