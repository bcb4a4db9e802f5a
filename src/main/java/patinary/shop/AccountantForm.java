package patinary.shop;

/** What is asked before a link for an accountant is made. */
class AccountantForm {

    public String forWhom = "";
    public String endsOn = "";
}
