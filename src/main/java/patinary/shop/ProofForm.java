package patinary.shop;

/** A person's password once more, and where she was going. */
class ProofForm {

    public String proof = "";
    public String to = "/";
    public String sending = "GET";
}
