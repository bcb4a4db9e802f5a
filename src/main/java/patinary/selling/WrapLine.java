package patinary.selling;

/** A supply that something was packed in, as typed. */
class WrapLine {
    public String supply = "";
    public String quantity = "";
    /** Whether it was judged by eye, as tape and paper off a roll are. */
    public boolean byEye;

    WrapLine() {}

    WrapLine(String supply, String quantity, boolean byEye) {
        this.supply = supply;
        this.quantity = quantity;
        this.byEye = byEye;
    }

    boolean isEmpty() {
        return supply.isBlank() && quantity.isBlank();
    }
}
