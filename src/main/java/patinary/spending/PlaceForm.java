package patinary.spending;

/** A money place, as typed. */
class PlaceForm {

    public long version;
    public String name = "";
    public String kind = "";
}
