package patinary.listing;

/** One of her patterns as typed. */
class PatternForm {
    public String id = "";
    public long version;
    public String name = "";
    public String channel = "";
    public String title = "{title}";
    public String body = "";
}
