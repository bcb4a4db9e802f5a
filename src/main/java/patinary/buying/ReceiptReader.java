package patinary.buying;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import patinary.buying.ReceiptDraft.DraftPiece;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/** Reads a receipt's form, noting beside each field what cannot be read and whether the till's total agrees. */
@Component
class ReceiptReader {

    private static final int NOTE = 2000;
    private static final int SOURCE_NAME = 120;

    private final CurrentShop shop;
    private final Sources sources;
    private final LineReader lineReader;
    private final PaymentReader paymentReader;

    ReceiptReader(CurrentShop shop, Sources sources, LineReader lineReader, PaymentReader paymentReader) {
        this.shop = shop;
        this.sources = sources;
        this.lineReader = lineReader;
        this.paymentReader = paymentReader;
    }

    /** The draft; to be used only where no error was noted. */
    Outcome read(ReceiptForm form, Errors errors) {
        Answers answers = new Answers(errors, shop.currency());
        List<ReceiptLine> lines = lines(form, answers);
        ChargeReader charges = new ChargeReader(answers, form, lines.size());
        List<ReceiptCharge> read = charges.charges();
        ReceiptSums sums = sums(answers, lines, read, charges.chargeLines());
        Amount till = answers.optionalAmount("tillTotal", form.tillTotal).orElse(Amount.ZERO);
        Optional<Difference> difference = answers.anyWrong()
                ? Optional.empty()
                : Optional.of(new Difference(sums.total(), till)).filter(Difference::exists);
        difference.ifPresent(d -> answers.wrong(
                "tillTotal",
                form.tillTotal.isBlank() ? "buying.error.total-missing" : "buying.error.total",
                shop.currency().plain(d.sum()),
                shop.currency().plain(d.till()),
                shop.currency().plain(d.difference().absolute())));
        return new Outcome(draft(form, answers, lines, charges, read, till), difference.orElse(null));
    }

    /** The day that was meant: a typed date goes before the quick answers. */
    LocalDate date(Answers answers, ReceiptForm form) {
        LocalDate date = shop.today();
        if (!form.date.isBlank() || ReceiptForm.OTHER.equals(form.day)) {
            date = answers.date("date", form.date);
        } else if (ReceiptForm.YESTERDAY.equals(form.day)) {
            date = shop.today().minusDays(1);
        }
        BuyingDates.check(answers, "date", date, shop);
        return date;
    }

    private ReceiptDraft draft(
            ReceiptForm form,
            Answers answers,
            List<ReceiptLine> lines,
            ChargeReader charges,
            List<ReceiptCharge> read,
            Amount till) {
        LocalDate date = date(answers, form);
        String note = answers.note("note", form.note, NOTE);
        String newSource = answers.note("newSource", form.newSource, SOURCE_NAME);
        UUID source =
                answers.optionalId("source", form.source, "buying.error.source").orElse(null);
        UUID trip = answers.optionalId("trip", form.trip, "buying.error.trip").orElse(null);
        var payments = paymentReader.read(answers, form, till, source != null || !newSource.isEmpty());
        List<DraftPiece> pieces = pieces(form, answers, lines);
        ReceiptContent content = new ReceiptContent(
                date, note, source, trip, till, lines, List.of(), read, charges.chargeLines(), payments);
        UUID id = answers.id("id", form.id, "buying.error.id");
        return new ReceiptDraft(id, form.version, content, newSource, pieces);
    }

    private @Nullable UUID source(Answers answers, ReceiptForm form) {
        UUID source =
                answers.optionalId("source", form.source, "buying.error.source").orElse(null);
        if (source != null && sources.findById(source).isEmpty()) {
            answers.wrong("source", "buying.error.source");
        }
        return source;
    }

    private List<ReceiptLine> lines(ReceiptForm form, Answers answers) {
        if (form.lines.stream().allMatch(ReceiptForm.LineForm::isEmpty)) {
            answers.wrong("", "buying.error.no-line");
        }
        return IntStream.range(0, form.lines.size())
                .mapToObj(i -> lineReader.line(answers, form.lines.get(i), i))
                .toList();
    }

    private List<DraftPiece> pieces(ReceiptForm form, Answers answers, List<ReceiptLine> lines) {
        List<DraftPiece> pieces = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).kind() == LineKind.PIECES) {
                pieces.addAll(lineReader.pieces(answers, form.lines.get(i), lines.get(i)));
            }
        }
        return pieces;
    }

    private static ReceiptSums sums(
            Answers answers, List<ReceiptLine> lines, List<ReceiptCharge> charges, List<ChargeLine> chargeLines) {
        try {
            ReceiptSums sums = ReceiptSums.of(lines, charges, chargeLines);
            sums.total();
            if (!sums.isBearable()) {
                answers.wrong("", "buying.error.unbearable");
            }
            return sums;
        } catch (ArithmeticException tooLarge) {
            answers.wrong("", "money.error.tooLarge");
            return ReceiptSums.of(List.of(), List.of(), List.of());
        }
    }

    /** What came of reading: a draft, and the difference to the till's total where there is one. */
    record Outcome(ReceiptDraft draft, @Nullable Difference difference) {}

    /**
     * The lines and the receipt's printed total do not agree.
     *
     * @param sum what the lines come to
     * @param till what the receipt says
     */
    record Difference(Amount sum, Amount till) {

        /** Where cash is rounded, it is by less than half of the smallest coins in use; more is no rounding. */
        static final long MOST_ROUNDING = 50;

        boolean exists() {
            return !sum.equals(till);
        }

        /** What the receipt says beyond the lines. */
        public Amount difference() {
            return till.minus(sum);
        }

        public boolean isMore() {
            return difference().isPositive();
        }

        public boolean mayBeRounding() {
            return difference().absolute().minor() <= MOST_ROUNDING;
        }
    }
}
