package patinary.selling;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import patinary.money.Amount;
import patinary.supplies.Supply;
import patinary.supplies.SupplyMeasures;
import patinary.web.Answers;

/** Reads the lines of a sale's form. */
@Component
class SaleLineAnswers {

    private static final int TITLE = 200;
    private static final BigDecimal MOST = BigDecimal.valueOf(100_000);

    /** The lines and pieces that were read. */
    record Read(List<SaleLine> lines, List<SalePiece> pieces) {}

    private final PieceFinder finder;
    private final RetailShelf shelf;
    private final BundleLines bundles;

    SaleLineAnswers(PieceFinder finder, RetailShelf shelf, BundleLines bundles) {
        this.finder = finder;
        this.shelf = shelf;
        this.bundles = bundles;
    }

    /** @param before what the sale said until now, or null where it is new */
    Read read(SaleForm form, Answers answers, @Nullable SaleContent before) {
        Read read = new Read(new ArrayList<>(), new ArrayList<>());
        Set<UUID> seen = new HashSet<>();
        for (int i = 0; i < form.lines.size(); i++) {
            SaleForm.Line line = form.lines.get(i);
            if (line.isEmpty()) {
                continue;
            }
            String at = "lines[" + i + "].";
            if (line.isBundled()) {
                bundles.read(line, at, answers, before, read.lines());
            } else if (line.isRetail()) {
                retail(line, at, answers, read);
            } else {
                pieces(line, at, answers, read, seen);
            }
        }
        if (read.lines().isEmpty()) {
            answers.wrong("addPiece", "selling.error.no-line");
        }
        return read;
    }

    private void pieces(SaleForm.Line line, String at, Answers answers, Read read, Set<UUID> seen) {
        int number = read.lines().size() + 1;
        List<PieceRef> refs = finder.read(answers, at + "codes", line.codes);
        List<BigDecimal> weights = Weights.read(answers, at + "weights", line.weights, refs.size());
        for (int i = 0; i < refs.size(); i++) {
            PieceRef ref = refs.get(i);
            if (!seen.add(ref.id())) {
                answers.wrong(at + "codes", "selling.error.piece-twice", ref.code());
            }
            read.pieces().add(new SalePiece(number, ref.id(), weights.get(i)));
        }
        String titles = refs.stream().map(PieceRef::title).collect(Collectors.joining(", "));
        Amount price = answers.amount(at + "price", line.price);
        read.lines()
                .add(new SaleLine(
                        number,
                        title(line, at, answers, titles),
                        BigDecimal.ONE,
                        price,
                        discount(line, at, answers, price),
                        null,
                        null));
    }

    private void retail(SaleForm.Line line, String at, Answers answers, Read read) {
        Optional<Supply.Facts> supply = shelf.find(line.supply);
        if (supply.isEmpty()) {
            answers.wrong(at + "title", "selling.error.supply");
            return;
        }
        BigDecimal quantity = positive(line, at, answers);
        BigDecimal content = answers.quantity(
                        at + "content", line.content, supply.get().dimension(), SupplyMeasures.of(supply.get()))
                .orElse(BigDecimal.ZERO);
        if (content.signum() == 0 && !line.content.isBlank()) {
            answers.wrong(at + "content", "selling.error.quantity");
        }
        Amount price = answers.amount(at + "price", line.price);
        Amount gross = price.times(quantity, RoundingMode.HALF_UP);
        read.lines()
                .add(new SaleLine(
                        read.lines().size() + 1,
                        title(line, at, answers, supply.get().name()),
                        quantity,
                        price,
                        discount(line, at, answers, gross),
                        UUID.fromString(line.supply),
                        content));
    }

    private static BigDecimal positive(SaleForm.Line line, String at, Answers answers) {
        BigDecimal quantity = answers.decimal(at + "quantity", line.quantity, "selling.error.quantity")
                .orElse(BigDecimal.ZERO);
        if (quantity.signum() <= 0 || quantity.compareTo(MOST) > 0) {
            answers.wrong(at + "quantity", "selling.error.quantity");
            return BigDecimal.ONE;
        }
        return quantity;
    }

    private static Amount discount(SaleForm.Line line, String at, Answers answers, Amount gross) {
        Amount discount = answers.optionalAmount(at + "discount", line.discount).orElse(Amount.ZERO);
        if (discount.compareTo(gross) > 0) {
            answers.wrong(at + "discount", "selling.error.discount");
            return Amount.ZERO;
        }
        return discount;
    }

    private static String title(SaleForm.Line line, String at, Answers answers, String usual) {
        String title = answers.note(at + "title", line.title, TITLE);
        return title.isEmpty() ? usual.substring(0, Math.min(usual.length(), TITLE)) : title;
    }
}
