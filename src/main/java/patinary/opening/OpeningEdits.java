package patinary.opening;

import java.util.List;

/** What the small buttons of the opening page do: they change the form and store nothing. */
final class OpeningEdits {

    private static final int MOST_ROWS = 240;

    private OpeningEdits() {}

    /**
     * Carries out a button such as {@code add-piece} or {@code remove-supply:2}.
     *
     * @return whether it was such a button
     */
    static boolean carryOut(OpeningForm form, String action) {
        String[] words = action.split(":");
        int at = words.length > 1 && words[1].matches("[0-9]{1,3}") ? Integer.parseInt(words[1]) : -1;
        switch (words[0]) {
            case "add-piece" -> add(form.pieces, new OpeningForm.PieceRow());
            case "add-supply" -> add(form.supplies, new OpeningForm.SupplyRow());
            case "add-owed" -> add(form.owed, new OpeningForm.OwedRow());
            case "remove-piece" -> remove(form.pieces, at);
            case "remove-supply" -> remove(form.supplies, at);
            case "remove-owed" -> remove(form.owed, at);
            default -> {
                return false;
            }
        }
        return true;
    }

    /** Takes out rows in which nothing was typed, so that nobody is asked about them. */
    static void tidy(OpeningForm form) {
        form.pieces.removeIf(OpeningForm.PieceRow::isEmpty);
        form.supplies.removeIf(OpeningForm.SupplyRow::isEmpty);
        form.owed.removeIf(OpeningForm.OwedRow::isEmpty);
    }

    private static <T> void add(List<T> rows, T row) {
        if (rows.size() < MOST_ROWS) {
            rows.add(row);
        }
    }

    private static void remove(List<?> rows, int at) {
        if (at >= 0 && at < rows.size()) {
            rows.remove(at);
        }
    }
}
