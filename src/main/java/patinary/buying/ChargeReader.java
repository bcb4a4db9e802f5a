package patinary.buying;

import java.util.ArrayList;
import java.util.List;
import patinary.buying.ReceiptForm.ChargeForm;
import patinary.money.Amount;
import patinary.web.Answers;

/** Reads what a receipt adds to its lines or takes off them, and the till's rounding. */
final class ChargeReader {

    private static final int TITLE = 120;

    private final Answers answers;
    private final int lineCount;
    private final List<ReceiptCharge> charges = new ArrayList<>();
    private final List<ChargeLine> chargeLines = new ArrayList<>();

    ChargeReader(Answers answers, ReceiptForm form, int lineCount) {
        this.answers = answers;
        this.lineCount = lineCount;
        for (int i = 0; i < form.charges.size(); i++) {
            if (!form.charges.get(i).isEmpty()) {
                read("charges[" + i + "].", form.charges.get(i));
            }
        }
        answers.signedAmount("rounding", form.rounding)
                .filter(amount -> !amount.isZero())
                .ifPresent(this::rounding);
    }

    List<ReceiptCharge> charges() {
        return List.copyOf(charges);
    }

    List<ChargeLine> chargeLines() {
        return List.copyOf(chargeLines);
    }

    private void read(String at, ChargeForm form) {
        int number = charges.size() + 1;
        ChargeKind kind = answers.word(at + "kind", form.kind, ChargeKind.class, "buying.error.charge-kind")
                .orElse(ChargeKind.FEE);
        AmountOrPercent value = AmountOrPercent.read(answers, at + "value", form.value);
        charges.add(new ReceiptCharge(
                number,
                kind,
                answers.note(at + "title", form.title, TITLE),
                value.percent(),
                value.isEmpty() ? Amount.ZERO : value.amount(),
                form.taxed && kind != ChargeKind.TAX && kind != ChargeKind.DISCOUNT,
                form.afterTax && kind == ChargeKind.DISCOUNT));
        form.lines.stream()
                .distinct()
                .filter(line -> line != null && line >= 1 && line <= lineCount)
                .forEach(line -> chargeLines.add(new ChargeLine(number, line)));
    }

    private void rounding(Amount amount) {
        charges.add(new ReceiptCharge(charges.size() + 1, ChargeKind.ROUNDING, "", null, amount, false, false));
    }
}
