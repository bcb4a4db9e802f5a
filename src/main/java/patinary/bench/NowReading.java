package patinary.bench;

import java.util.Locale;
import patinary.web.Answers;

/** Turns what was tapped into the entry's ordinary form; places in the lists, and so the names of the fields, stay. */
final class NowReading {

    private NowReading() {}

    static BenchForm entry(NowForm form, Answers answers) {
        BenchForm entry = new BenchForm();
        entry.id = form.id;
        entry.day = form.day;
        entry.date = form.date;
        entry.pieces = form.pieces;
        entry.ready = form.ready;
        entry.finish = form.finish;
        entry.tools = form.tools;
        entry.minutes = form.minutes;
        entry.done = form.done;
        entry.note = form.note;
        entry.mishaps = form.mishaps;
        for (int i = 0; i < form.uses.size(); i++) {
            entry.uses.add(use(i, form.uses.get(i), form.tap(i), answers));
        }
        return entry;
    }

    /** A supply that was offered and not tapped is no use; one that was tapped needs a quantity. */
    private static BenchForm.UseLine use(int i, BenchForm.UseLine typed, NowForm.Tap tap, Answers answers) {
        BenchForm.UseLine line = new BenchForm.UseLine();
        if (!tap.picked && typed.quantity.isBlank()) {
            return line;
        }
        if (!tap.measure.isBlank() && !typed.quantity.isBlank()) {
            answers.wrong("uses[" + i + "].quantity", "bench.now.error.two");
        }
        line.supply = typed.supply;
        line.quantity = typed.quantity.isBlank() ? words(tap) : typed.quantity;
        line.how = typed.how;
        line.share = typed.share;
        line.only = typed.only;
        line.parts = typed.parts;
        return line;
    }

    /** "1 dab", "3 dabs": as she would have typed it. */
    static String words(NowForm.Tap tap) {
        if (tap.measure.isBlank()) {
            return "";
        }
        String times = tap.times.isBlank() ? "1" : tap.times;
        boolean many = !times.equals("1") && takesAnS(tap.measure);
        return times + " " + tap.measure + (many ? "s" : "");
    }

    private static boolean takesAnS(String measure) {
        String last = measure.substring(measure.length() - 1).toLowerCase(Locale.ROOT);
        return !"sxzhy".contains(last) && Character.isLetter(last.charAt(0));
    }
}
