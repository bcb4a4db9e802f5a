package patinary.shop;

/** A new password, and the one there was; neither is ever shown again. */
class PasswordForm {

    public String current = "";
    public String password = "";
    public boolean others;
}
