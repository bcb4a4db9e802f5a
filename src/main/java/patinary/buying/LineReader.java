package patinary.buying;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import patinary.buying.ReceiptDraft.DraftPiece;
import patinary.buying.ReceiptForm.LineForm;
import patinary.buying.ReceiptForm.PieceForm;
import patinary.money.Amount;
import patinary.spending.ExpenseCategories;
import patinary.supplies.Taking;
import patinary.web.Answers;

/** Reads one line of a receipt's form, and the pieces it brings. */
@Component
class LineReader {

    private static final int TITLE = 200;
    private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);

    private final SupplyReader supplies;
    private final ExpenseCategories categories = ExpenseCategories.load();

    LineReader(SupplyReader supplies) {
        this.supplies = supplies;
    }

    ReceiptLine line(Answers answers, LineForm form, int position) {
        String at = "lines[" + position + "].";
        LineKind kind = answers.word(at + "kind", form.kind, LineKind.class, "buying.error.kind")
                .orElse(LineKind.HOME);
        Optional<SupplyReader.Bought> bought = kind.isSupply() ? supplies.read(answers, at, form) : Optional.empty();
        String title = form.title.isBlank() && bought.isPresent()
                ? bought.get().name()
                : answers.text(at + "title", form.title, TITLE, "buying.error.title");
        AmountOrPercent discount = AmountOrPercent.read(answers, at + "discount", form.discount);
        // A tool that is an expense at once never comes to the bench's stock: the receipt says so itself.
        boolean tool = kind == LineKind.SUPPLY
                && bought.filter(SupplyReader.Bought::isExpense).isPresent();
        Optional<SupplyReader.Bought> stocked = tool ? Optional.empty() : bought;
        ReceiptLine line = new ReceiptLine(
                position + 1,
                tool ? LineKind.EXPENSE : kind,
                title,
                quantity(answers, at, form),
                answers.amount(at + "price", form.price),
                discount.percent(),
                discount.amount(),
                form.about,
                stocked.map(SupplyReader.Bought::supplyId).orElse(null),
                stocked.map(SupplyReader.Bought::content).orElse(null),
                tool ? Taking.TOOLS : kind == LineKind.EXPENSE ? category(answers, at, form) : null);
        checkDiscount(answers, at, line);
        return line;
    }

    /** How many pieces a line brings where they are not listed one by one: as many as were bought. */
    static int pieceCount(LineForm form) {
        String typed = form.pieceCount.isBlank() ? form.quantity : form.pieceCount;
        try {
            return Math.min(Math.max(new BigDecimal(typed.strip()).intValueExact(), 1), PieceRows.MOST);
        } catch (ArithmeticException | NumberFormatException notWhole) {
            return 1;
        }
    }

    List<DraftPiece> pieces(Answers answers, LineForm form, ReceiptLine line) {
        String at = "lines[" + (line.line() - 1) + "].";
        if (form.pieces.isEmpty()) {
            answers.whole(at + "pieceCount", form.pieceCount)
                    .filter(count -> count < 1 || count > PieceRows.MOST)
                    .ifPresent(count -> answers.wrong(at + "pieceCount", "buying.error.piece-count", PieceRows.MOST));
            DraftPiece one = new DraftPiece(line.line(), null, line.title(), null, null, BigDecimal.ONE);
            return java.util.Collections.nCopies(pieceCount(form), one);
        }
        boolean byValue = form.pieces.stream().anyMatch(piece -> !piece.value.isBlank());
        List<DraftPiece> pieces = new ArrayList<>();
        for (int i = 0; i < form.pieces.size(); i++) {
            pieces.add(piece(answers, at + "pieces[" + i + "].", form.pieces.get(i), line, byValue));
        }
        return pieces;
    }

    private static DraftPiece piece(Answers answers, String at, PieceForm form, ReceiptLine line, boolean byValue) {
        String title = answers.note(at + "title", form.title, TITLE);
        return new DraftPiece(
                line.line(),
                answers.optionalId(at + "id", form.id, "buying.error.id").orElse(null),
                title.isEmpty() ? line.title() : title,
                id(answers, at + "kind", form.kind),
                id(answers, at + "style", form.style),
                byValue ? value(answers, at + "value", form.value) : BigDecimal.ONE);
    }

    private static @Nullable UUID id(Answers answers, String field, String answer) {
        return answers.optionalId(field, answer, "buying.error.id").orElse(null);
    }

    private static BigDecimal value(Answers answers, String field, String answer) {
        if (answer.isBlank()) {
            answers.wrong(field, "buying.error.value-missing");
        }
        return BigDecimal.valueOf(
                answers.optionalAmount(field, answer).orElse(Amount.ZERO).minor());
    }

    private static BigDecimal quantity(Answers answers, String at, LineForm form) {
        BigDecimal quantity = answers.decimal(at + "quantity", form.quantity, "buying.error.quantity")
                .orElse(BigDecimal.ZERO);
        if (quantity.signum() <= 0 || quantity.compareTo(MOST) > 0) {
            answers.wrong(at + "quantity", "buying.error.quantity");
            return BigDecimal.ONE;
        }
        return quantity;
    }

    private @Nullable String category(Answers answers, String at, LineForm form) {
        if (!categories.has(form.category)) {
            answers.wrong(at + "category", "buying.error.category");
        }
        return form.category;
    }

    private static void checkDiscount(Answers answers, String at, ReceiptLine line) {
        try {
            if (line.net().isNegative()) {
                answers.wrong(at + "discount", "buying.error.discount");
            }
        } catch (ArithmeticException tooLarge) {
            answers.wrong(at + "price", "money.error.tooLarge");
        }
    }
}
