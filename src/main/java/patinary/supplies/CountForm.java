package patinary.supplies;

import java.util.UUID;

/** A count or a taking, as typed. The id is made with the form, so that a form sent twice is one document. */
class CountForm {
    public String id = UUID.randomUUID().toString();
    public String date = "";
    public String place = "BENCH";
    public String quantity = "";
    public boolean ownUseTax;
    public boolean waste;
    public String note = "";
}
