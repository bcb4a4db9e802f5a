package patinary.buying;

/** A source as typed. */
class SourceForm {

    public long version;
    public String name = "";
    public String note = "";
    public String resaleCertificate = "";
    public String taxPercent = "";
}
