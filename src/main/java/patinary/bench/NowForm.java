package patinary.bench;

import java.util.ArrayList;
import java.util.List;

/** A bench entry as it is tapped together with paint on the hands: each use also by her own measure and how many of it. */
class NowForm extends BenchForm {

    /** What was tapped for the use of the same place in {@code uses}. */
    static class Tap {
        public boolean picked;
        public String measure = "";
        public String times = "1";
    }

    public List<Tap> taps = new ArrayList<>();
    public String waitMinutes = "";
    public String waitWords = "";

    Tap tap(int use) {
        while (taps.size() <= use) {
            taps.add(new Tap());
        }
        return taps.get(use);
    }
}
