package patinary.sheets;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import patinary.measure.Sides;

/**
 * What may be left of a supply that comes in sheets: whole ones, and those that were cut.
 *
 * @param whole how many have not been cut, by the books
 * @param opened those that were cut and are not used up, in the order in which they were begun
 */
record SheetLayout(int whole, List<OpenSheet> opened) {

    /** Less than this is a sliver and not looked at again, in square centimetres. */
    private static final BigDecimal SLIVER = BigDecimal.ONE;

    /**
     * Lays the cuts out, in the order in which they were made: each on the first sheet on which it fits, else on a new one.
     *
     * @param left what is left by the books, in square centimetres; the whole sheets follow from it
     */
    static SheetLayout of(Sides sheet, List<CutOut> cuts, BigDecimal left) {
        List<OpenSheet> opened = new ArrayList<>();
        for (CutOut cut : cuts) {
            if (cut.sides() != null && cut.sides().fitsIn(sheet)) {
                place(sheet, cut.sides(), opened);
            } else {
                strips(sheet, cut.area(), opened);
            }
        }
        List<OpenSheet> usable = opened.stream()
                .filter(one -> one.freeArea().compareTo(SLIVER) > 0)
                .toList();
        BigDecimal onOpened = usable.stream().map(OpenSheet::freeArea).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal untouched = left.subtract(onOpened).add(SLIVER).max(BigDecimal.ZERO);
        int whole = untouched.divide(sheet.area(), 0, RoundingMode.DOWN).intValueExact();
        return new SheetLayout(whole, usable);
    }

    private static void place(Sides sheet, Sides cut, List<OpenSheet> opened) {
        if (opened.stream().noneMatch(one -> one.take(cut))) {
            OpenSheet fresh = new OpenSheet(sheet);
            fresh.take(cut);
            opened.add(fresh);
        }
    }

    /** Off the last sheet that was begun, for that is the one at hand. */
    private static void strips(Sides sheet, BigDecimal area, List<OpenSheet> opened) {
        BigDecimal missing = area;
        if (!opened.isEmpty()) {
            missing = missing.subtract(opened.get(opened.size() - 1).take(missing));
        }
        while (missing.signum() > 0) {
            OpenSheet fresh = new OpenSheet(sheet);
            missing = missing.subtract(fresh.take(missing));
            opened.add(fresh);
        }
    }
}
