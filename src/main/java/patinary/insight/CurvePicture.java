package patinary.insight;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import patinary.survival.Limits;
import patinary.survival.Span;
import patinary.survival.SurvivalCurve;

/**
 * The curve of the share unsold as paths of a drawing that is {@value #WIDE} wide and {@value #HIGH} high. The same days for all
 * curves that are drawn together; the table beside it has the figures.
 *
 * @param line the steps of the curve
 * @param band the area between its limits, or empty where none can be told
 */
record CurvePicture(String line, String band) {

    static final int WIDE = 360;
    static final int HIGH = 180;

    private static final int TEN = 10;

    /** @param days the last day drawn, at least 1 */
    static CurvePicture of(SurvivalCurve curve, int days) {
        StringBuilder line = new StringBuilder("M0 0");
        for (SurvivalCurve.Step step : curve.steps()) {
            if (step.day() <= days && step.sold() > 0) {
                line.append('H').append(x(step.day(), days)).append('V').append(y(step.unsold()));
            }
        }
        int last =
                curve.steps().stream().mapToInt(SurvivalCurve.Step::day).max().orElse(0);
        return new CurvePicture(
                line.append('H').append(x(Math.min(last, days), days)).toString(), band(curve, days));
    }

    private static String band(SurvivalCurve curve, int days) {
        List<String> upper = new ArrayList<>();
        List<String> lower = new ArrayList<>();
        double high = 1;
        double low = 1;
        for (SurvivalCurve.Step step : curve.steps()) {
            Span limits = step.limits(Limits.LOG_LOG);
            if (step.day() > days || Double.isNaN(limits.high())) {
                continue;
            }
            String x = x(step.day(), days);
            if (!upper.isEmpty()) {
                upper.add(x + " " + y(high));
                lower.add(x + " " + y(low));
            }
            high = limits.high();
            low = limits.low();
            upper.add(x + " " + y(high));
            lower.add(x + " " + y(low));
        }
        if (upper.isEmpty()) {
            return "";
        }
        Collections.reverse(lower);
        return "M" + String.join("L", upper) + "L" + String.join("L", lower) + "Z";
    }

    private static String x(int day, int days) {
        return number((double) day / days * WIDE);
    }

    private static String y(double share) {
        return number((1 - share) * HIGH);
    }

    /** To one decimal, by hand: a curve of ten years has thousands of corners. */
    private static String number(double value) {
        long tenths = Math.round(value * TEN);
        return tenths / TEN + "." + tenths % TEN;
    }
}
