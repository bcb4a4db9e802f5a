package patinary.shop;

/** What the sign-in page shows again. The answers themselves are read by the security filter. */
class SignInForm {

    public String name = "";
    public String password = "";
    public boolean ownDevice;
}
