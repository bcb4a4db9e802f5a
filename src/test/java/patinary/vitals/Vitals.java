package patinary.vitals;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What one opening of a page felt like.
 *
 * @param paint largest contentful paint, milliseconds from the start of the navigation
 * @param shift cumulative layout shift, without unit
 * @param answer the slowest answer to a finger, milliseconds until the next paint; 0 where all took less than 16
 * @param bytes what came over the line for the page and its files, headers included
 * @param requests how many requests that took
 * @param photoBytes what the photos in sight took after that
 * @param photos how many those were
 * @param taps how many things were touched
 */
record Vitals(
        double paint, double shift, double answer, long bytes, int requests, long photoBytes, int photos, int taps) {

    /** The value that a share of the runs stays at or below; the nearest rank, so that it is one that was measured. */
    static double quantile(List<Vitals> runs, double share, ToDoubleFunction<Vitals> value) {
        List<Vitals> sorted =
                runs.stream().sorted(Comparator.comparingDouble(value)).toList();
        int rank = (int) Math.ceil(share * sorted.size());
        return value.applyAsDouble(sorted.get(Math.max(rank, 1) - 1));
    }
}
