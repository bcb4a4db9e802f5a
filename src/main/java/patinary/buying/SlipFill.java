package patinary.buying;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import patinary.buying.ReceiptForm.ChargeForm;
import patinary.buying.ReceiptForm.LineForm;
import patinary.slips.Slip;

/** Turns what a slip seems to say into ticks, and ticks into the ordinary form of a receipt. */
final class SlipFill {

    /** A line is ticked beforehand from this confidence on; a rule of thumb of the project's own. */
    static final double SURE = 60;

    private SlipFill() {}

    /** Only what adds up to the slip's own total has its sums ticked; a date that could be two is left open. */
    static SlipForm suggest(Slip slip, List<Source> sources) {
        SlipForm form = new SlipForm();
        sources.stream()
                .filter(source -> same(source.name(), slip.shop()))
                .findFirst()
                .ifPresentOrElse(source -> form.source = source.id().toString(), () -> form.newSource = slip.shop());
        form.date = slip.dates().size() == 1 ? slip.dates().get(0).toString() : "";
        form.tax = plain(slip.tax());
        form.discount = plain(slip.discount());
        form.total = plain(slip.total());
        form.takeTax = slip.tax() != null && slip.addsUp();
        form.takeDiscount = slip.discount() != null && slip.addsUp();
        form.takeTotal = slip.total() != null && slip.addsUp();
        slip.items().stream().limit(FormEdits.MOST_LINES).forEach(item -> form.lines.add(row(item)));
        return form;
    }

    private static SlipForm.Row row(Slip.Item item) {
        SlipForm.Row row = new SlipForm.Row();
        row.take = item.confidence() >= SURE;
        row.title = item.title();
        row.quantity = String.valueOf(item.quantity());
        row.price = plain(item.price());
        row.discount = item.discount() == 0 ? "" : plain(item.discount());
        return row;
    }

    /** Puts what is ticked into an empty form of a receipt. */
    static void fill(ReceiptForm receipt, SlipForm slip) {
        receipt.source = slip.source;
        receipt.newSource = slip.source.isEmpty() ? slip.newSource : "";
        if (!slip.date.isEmpty()) {
            receipt.day = ReceiptForm.OTHER;
            receipt.date = slip.date;
        }
        receipt.tillTotal = slip.takeTotal ? slip.total : "";
        slip.lines.stream().filter(row -> row.take).limit(FormEdits.MOST_LINES).forEach(row -> {
            LineForm line = new LineForm();
            line.title = row.title;
            line.price = row.price;
            line.quantity = row.quantity;
            line.discount = row.discount;
            receipt.lines.add(line);
        });
        charge(receipt, slip.takeDiscount, "DISCOUNT", slip.discount);
        charge(receipt, slip.takeTax, "TAX", slip.tax);
        FormEdits.tidy(receipt);
    }

    private static void charge(ReceiptForm receipt, boolean take, String kind, String value) {
        if (take) {
            ChargeForm charge = new ChargeForm();
            charge.kind = kind;
            charge.value = value;
            receipt.charges.add(charge);
        }
    }

    /** The same letters and digits, whatever the case and the gaps. */
    private static boolean same(String one, String other) {
        return bare(one).equals(bare(other)) && !bare(one).isEmpty();
    }

    private static String bare(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    private static String plain(@Nullable Long minor) {
        return minor == null ? "" : BigDecimal.valueOf(minor, 2).toPlainString();
    }
}
