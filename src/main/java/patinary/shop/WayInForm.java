package patinary.shop;

/** What somebody answers who comes with a code. The password is never shown again. */
class WayInForm {

    public String name = "";
    public String code = "";
    public String password = "";
}
