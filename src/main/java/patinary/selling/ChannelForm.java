package patinary.selling;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A channel as typed. */
class ChannelForm {

    /** A fee rule as typed; a row left empty is none. */
    static class Rule {
        public String validFrom = "";
        public String percent = "";
        public String fixed = "";
        public String base = "";
        public String least = "";
        public String most = "";
        public String above = "";
        public String abovePercent = "";
        public String furtherAbove = "";
        public String furtherPercent = "";
        public boolean aboveOnWhole;
        public String paymentPercent = "";
        public String paymentFixed = "";
        public String perOffer = "";
        public String perMonth = "";

        boolean isEmpty() {
            return validFrom.isBlank() && percent.isBlank() && fixed.isBlank() && !isFuller();
        }

        /** Whether anything is said in the fold. */
        public boolean isFuller() {
            return aboveOnWhole
                    || Stream.of(
                                    base,
                                    least,
                                    most,
                                    above,
                                    abovePercent,
                                    furtherAbove,
                                    furtherPercent,
                                    paymentPercent,
                                    paymentFixed,
                                    perOffer,
                                    perMonth)
                            .anyMatch(text -> !text.isBlank());
        }
    }

    public String id = "";
    public long version;
    public String name = "";
    public boolean passesTax;
    public String place = "";
    public String newPlace = "";
    public List<Rule> rules = new ArrayList<>();
}
