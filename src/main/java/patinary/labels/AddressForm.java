package patinary.labels;

/** The address on labels, as typed. */
class AddressForm {

    public String address = "";
}
