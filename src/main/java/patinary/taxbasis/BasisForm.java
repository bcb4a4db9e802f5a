package patinary.taxbasis;

/** How a year is to be counted, as chosen; and that she was told what it does. */
class BasisForm {

    public String income = "";
    public String supplies = "";
    public String note = "";
    public boolean sure;
}
