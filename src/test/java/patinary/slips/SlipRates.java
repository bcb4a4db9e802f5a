package patinary.slips;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Counts what is read rightly from drawn slips; all of it is the project's own drawing, so it is no field rate. */
final class SlipRates {

    static final int LAYOUTS = 24;
    static final int LINES_AT_LEAST = 84;

    int lines;
    int linesRight;
    int extra;
    int totalRight;
    int dateRight;
    int shopRight;
    final List<String> wrong = new ArrayList<>();

    static SlipRates measure(ReadingProgram program, Set<SlipPicture.Step> steps) throws IOException {
        SlipRates rates = new SlipRates();
        for (int layout = 0; layout < LAYOUTS; layout++) {
            DrawnSlip truth = new DrawnSlip(layout);
            rates.count(
                    layout,
                    truth,
                    SlipReader.read(WordTable.read(program.read(SlipPicture.prepare(truth.photo(), steps)))));
        }
        return rates;
    }

    private void count(int layout, DrawnSlip truth, Slip read) {
        lines += truth.items.size();
        int right = 0;
        List<Slip.Item> left = new ArrayList<>(read.items());
        for (Slip.Item item : truth.items) {
            if (left.removeIf(one -> same(one, item))) {
                right++;
            } else {
                wrong.add(layout + " line " + item);
            }
        }
        linesRight += right;
        extra += left.size();
        left.forEach(item -> wrong.add(layout + " extra " + item));
        totalRight += note(
                read.total() != null && read.total() == truth.total,
                layout + " total " + truth.total + " " + read.total());
        dateRight += note(read.dates().contains(truth.date), layout + " date " + truth.date + " " + read.dates());
        shopRight +=
                note(read.shop().equalsIgnoreCase(truth.shop), layout + " shop " + truth.shop + " / " + read.shop());
    }

    private int note(boolean right, String what) {
        if (!right) {
            wrong.add(what);
        }
        return right ? 1 : 0;
    }

    /** Price, number and discount; the title is not judged here. */
    private static boolean same(Slip.Item one, Slip.Item other) {
        return one.net() == other.net() && one.quantity() == other.quantity() && one.discount() == other.discount();
    }

    @Override
    public String toString() {
        return "Self-rendered slips, no field rate: lines %d of %d (%d extra), totals %d, dates %d, shops %d of %d"
                .formatted(linesRight, lines, extra, totalRight, dateRight, shopRight, LAYOUTS);
    }
}
