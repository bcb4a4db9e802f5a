package patinary.fuzz;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What went wrong, one example of each kind. */
final class Faults {

    private final Map<String, String> byKind = new TreeMap<>();

    synchronized void add(String kind, String example) {
        if (byKind.putIfAbsent(kind, example) == null) {
            System.out.println("FAULT " + kind + " | " + example);
        }
    }

    void addIf(boolean wrong, String kind, String example) {
        if (wrong) {
            add(kind, example);
        }
    }

    /** The failure's name and the first place of the project in it: two of the same kind are one fault. */
    static String kind(Throwable failure) {
        Throwable deepest = failure;
        while (deepest.getCause() != null && deepest.getCause() != deepest) {
            deepest = deepest.getCause();
        }
        String place = "?";
        for (Throwable one = failure; one != null && place.equals("?"); one = one.getCause()) {
            place = place(one);
        }
        String words = String.valueOf(deepest.getMessage());
        return deepest.getClass().getSimpleName() + " at " + place + ": "
                + words.substring(0, Math.min(words.length(), 80))
                        .replaceAll("\\s+", " ")
                        .replaceAll("'[^']*'|\"[^\"]*\"|\\[patinary[^]]*]", "_");
    }

    private static String place(Throwable failure) {
        for (StackTraceElement step : failure.getStackTrace()) {
            if (step.getClassName().startsWith("patinary.")
                    && !step.getClassName().contains("$$")) {
                return step.getClassName() + ":" + step.getLineNumber();
            }
        }
        return "?";
    }

    int size() {
        return byKind.size();
    }

    List<String> all() {
        return byKind.entrySet().stream()
                .map(fault -> fault.getKey() + " | " + fault.getValue())
                .toList();
    }
}
