package patinary.shop;

/** The settings that may change, as typed. */
class SettingsForm {

    public long version;
    public String shopName = "";
    public String taxTable = "";
    public String hourlyRate = "";
    public String costingMethod = "";
    public String timeZone = "";
    public String language = "";
    public String country = "";
}
