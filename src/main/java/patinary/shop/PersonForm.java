package patinary.shop;

/** The name of somebody who helps. */
class PersonForm {

    public String name = "";
    public long version;
}
