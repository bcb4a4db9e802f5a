package patinary.asking;

import java.util.ArrayList;
import java.util.List;

/** The plan of mark-downs as typed; a row left empty is none. */
class PlanForm {

    /** One step. */
    static class Row {
        public String days = "";
        public String percent = "";

        boolean isEmpty() {
            return days.isBlank() && percent.isBlank();
        }
    }

    public List<Row> rows = new ArrayList<>();
}
