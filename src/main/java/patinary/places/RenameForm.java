package patinary.places;

/** Another name for a place. */
class RenameForm {

    public String place = "";
    public String name = "";
}
