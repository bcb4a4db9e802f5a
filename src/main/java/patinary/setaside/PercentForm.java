package patinary.setaside;

/** Her percentages of a year, as typed. */
class PercentForm {

    public long version = -1;
    public String income = "";
    public String state = "";
}
