package patinary.buyers;

import java.util.ArrayList;
import java.util.List;

/** What is to be erased, as chosen. */
class EraseForm {
    public boolean notes;
    public boolean orders;
    public boolean sure;
    public String months = "36";
    public List<String> chosen = new ArrayList<>();
}
