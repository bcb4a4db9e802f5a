package patinary.labels;

/** What is to be printed on which sheet. */
class SheetForm {

    public String codes = "";
    public String grid = "";
    /** The first free label, from 1. */
    public String first = "1";

    public boolean price;
}
