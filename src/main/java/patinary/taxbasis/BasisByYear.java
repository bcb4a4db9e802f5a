package patinary.taxbasis;

import java.util.Map;
import java.util.TreeMap;

/** How each year is counted: as the latest year up to it that was set. */
record BasisByYear(TreeMap<Integer, TaxBasis> set) {

    BasisByYear {
        set = new TreeMap<>(set);
    }

    /** As the books have it where neither the year nor one before it was set. */
    TaxBasis of(int year) {
        Map.Entry<Integer, TaxBasis> latest = set.floorEntry(year);
        return latest == null ? TaxBasis.AS_BOOKS : latest.getValue();
    }

    /**
     * How the year before was counted. The year before the books is taken to be counted as their first year, so that the books'
     * first day changes nothing, unless she set something up to that year.
     *
     * @param firstOfBooks the year in which the books begin
     */
    TaxBasis before(int year, int firstOfBooks) {
        return year == firstOfBooks && set.floorEntry(year - 1) == null ? of(firstOfBooks) : of(year - 1);
    }

    /** The same with one year set otherwise. */
    BasisByYear with(int year, TaxBasis basis) {
        BasisByYear other = new BasisByYear(set);
        other.set.put(year, basis);
        return other;
    }

    /** The same without what was set for one year. */
    BasisByYear without(int year) {
        BasisByYear other = new BasisByYear(set);
        other.set.remove(year);
        return other;
    }
}
