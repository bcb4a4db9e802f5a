package patinary.pieces;

/** A name of one of her lists. */
class NameForm {

    public long version;
    public String name = "";
    public String area = "";
    public String shape = "";
    public String measures = "";
}
