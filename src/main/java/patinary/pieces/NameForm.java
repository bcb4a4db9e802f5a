package patinary.pieces;

/** A name of one of her lists. */
class NameForm {

    public long version;
    public String name = "";
}
