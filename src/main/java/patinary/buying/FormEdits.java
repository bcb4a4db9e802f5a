package patinary.buying;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import patinary.buying.ReceiptForm.ChargeForm;
import patinary.buying.ReceiptForm.LineForm;
import patinary.buying.ReceiptForm.PaymentForm;

/** What the small buttons of a receipt's form do: they change the form and save nothing. */
final class FormEdits {

    static final int MOST_LINES = 100;

    private FormEdits() {}

    /**
     * Carries out a button such as {@code add-line} or {@code remove-piece:2:0}.
     *
     * @return whether it was such a button
     */
    static boolean carryOut(ReceiptForm form, String action) {
        String[] words = action.split(":");
        int at = number(words, 1);
        switch (words[0]) {
            case "add-line" -> addLine(form);
            case "remove-line" -> removeLine(form, at);
            case "show" -> {
                // Draws the form again, for the fields of a kind that was chosen.
            }
            case "add-piece" -> line(form, at).forEach(PieceRows::add);
            case "remove-piece" -> line(form, at).forEach(line -> PieceRows.remove(line, number(words, 2)));
            case "add-charge" -> form.charges.add(new ChargeForm());
            case "remove-charge" -> remove(form.charges, at);
            case "add-payment" -> form.payments.add(new PaymentForm());
            case "remove-payment" -> remove(form.payments, at);
            default -> {
                return false;
            }
        }
        return true;
    }

    /** Takes out lines in which nothing was typed, so that nobody is asked about them. */
    static void tidy(ReceiptForm form) {
        for (int i = form.lines.size() - 1; i >= 0; i--) {
            if (form.lines.size() > 1 && form.lines.get(i).isEmpty()) {
                removeLine(form, i);
            }
        }
        if (form.lines.isEmpty()) {
            addLine(form);
        }
    }

    private static void addLine(ReceiptForm form) {
        if (form.lines.size() < MOST_LINES) {
            LineForm line = new LineForm();
            if (!form.lines.isEmpty()) {
                line.kind = form.lines.get(form.lines.size() - 1).kind;
            }
            form.lines.add(line);
        }
    }

    /** The charges that name lines by their position keep naming the same ones. */
    private static void removeLine(ReceiptForm form, int at) {
        if (at < 0 || at >= form.lines.size()) {
            return;
        }
        form.lines.remove(at);
        int gone = at + 1;
        for (ChargeForm charge : form.charges) {
            charge.lines = charge.lines.stream()
                    .filter(line -> line != gone)
                    .map(line -> line > gone ? line - 1 : line)
                    .collect(Collectors.toCollection(ArrayList::new));
        }
    }

    private static List<LineForm> line(ReceiptForm form, int at) {
        return at >= 0 && at < form.lines.size() ? List.of(form.lines.get(at)) : List.of();
    }

    private static void remove(List<?> rows, int at) {
        if (at >= 0 && at < rows.size()) {
            rows.remove(at);
        }
    }

    private static int number(String[] words, int index) {
        return words.length > index && words[index].matches("[0-9]{1,3}") ? Integer.parseInt(words[index]) : -1;
    }
}
