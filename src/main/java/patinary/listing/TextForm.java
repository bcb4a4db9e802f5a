package patinary.listing;

/** The text of an offer as edited. */
class TextForm {
    public long version;
    public String title = "";
    public String body = "";
}
