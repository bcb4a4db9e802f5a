package patinary.selling;

import java.util.ArrayList;
import java.util.List;

/** An offer as typed. */
class OfferForm {
    public String id = "";
    public long version;
    public String date = "";
    public String title = "";
    public String codes = "";
    public String add = "";
    public String weights = "";
    public String price = "";
    public List<String> channels = new ArrayList<>();
    public String note = "";
}
