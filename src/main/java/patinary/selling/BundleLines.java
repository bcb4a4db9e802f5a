package patinary.selling;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import patinary.money.Amount;
import patinary.money.Shares;
import patinary.shop.CurrentShop;
import patinary.supplies.Bundle;
import patinary.supplies.BundleBook;
import patinary.supplies.BundleShares;
import patinary.web.Answers;
import patinary.web.Ids;

/** Turns one line of a sale's form into the sale lines of a bundle's parts, and back. */
@Component
class BundleLines {

    private static final int TITLE = 120;
    private static final int MOST = 1000;

    /** A part of a bundle with its weight in the price of one. */
    private record Part(String title, UUID supplyId, BigDecimal content, BigDecimal weight) {}

    private final BundleBook book;
    private final RetailShelf shelf;
    private final CurrentShop shop;

    BundleLines(BundleBook book, RetailShelf shelf, CurrentShop shop) {
        this.book = book;
        this.shelf = shelf;
        this.shop = shop;
    }

    /** A line for one of the bundle, at the price asked now. */
    Optional<SaleForm.Line> line(UUID id) {
        return book.find(id).filter(kept -> !kept.removed()).map(kept -> {
            SaleForm.Line line = new SaleForm.Line();
            line.bundle = id.toString();
            line.title = kept.facts().name();
            line.quantity = "1";
            line.price = shop.currency().plain(kept.facts().price());
            return line;
        });
    }

    /** The line of a bundle that was sold. */
    SaleForm.Line line(SoldBundle sold) {
        SaleForm.Line line = new SaleForm.Line();
        line.bundle = sold.id().toString();
        line.sold = Integer.toString(sold.number());
        line.title = sold.title();
        line.quantity = sold.quantity().stripTrailingZeros().toPlainString();
        line.price = shop.currency().plain(sold.price());
        line.discount = sold.discount().isZero() ? "" : shop.currency().plain(sold.discount());
        return line;
    }

    /**
     * Reads a line into those of the parts.
     *
     * @param before what the sale said until now: a bundle it has already keeps its parts, whatever became of it since
     * @param lines what was read before it; the parts are added
     */
    void read(SaleForm.Line line, String at, Answers answers, @Nullable SaleContent before, List<SaleLine> lines) {
        Optional<SoldBundle> sold = sold(line, before);
        Optional<BundleBook.Kept> kept = Ids.read(line.bundle).flatMap(book::find);
        if (kept.isEmpty() || sold.isEmpty() && kept.get().removed()) {
            answers.wrong(at + "title", "selling.error.bundle");
            return;
        }
        String typed = answers.note(at + "title", line.title, TITLE);
        String title = typed.isEmpty() ? kept.get().facts().name() : typed;
        BigDecimal quantity = quantity(line, at, answers);
        Amount price = answers.amount(at + "price", line.price);
        Amount discount = answers.optionalAmount(at + "discount", line.discount).orElse(Amount.ZERO);
        if (discount.compareTo(price.times(quantity, RoundingMode.HALF_UP)) > 0) {
            answers.wrong(at + "discount", "selling.error.discount");
            discount = Amount.ZERO;
        }
        List<Part> parts =
                sold.map(this::parts).orElseGet(() -> parts(kept.get().facts()));
        SaleLine.OfBundle of = new SaleLine.OfBundle(kept.get().id(), number(lines), title);
        lines.addAll(lines(lines.size(), of, parts, quantity, price, discount));
    }

    private static List<SaleLine> lines(
            int before, SaleLine.OfBundle of, List<Part> parts, BigDecimal quantity, Amount price, Amount discount) {
        List<Amount> prices =
                Shares.split(price, parts.stream().map(Part::weight).toList());
        List<Amount> discounts = Shares.byAmount(discount, prices);
        List<SaleLine> lines = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            lines.add(new SaleLine(
                    before + i + 1,
                    part.title(),
                    quantity,
                    prices.get(i),
                    discounts.get(i),
                    part.supplyId(),
                    part.content(),
                    of));
        }
        return lines;
    }

    private static Optional<SoldBundle> sold(SaleForm.Line line, @Nullable SaleContent before) {
        return before == null
                ? Optional.empty()
                : before.bundles().stream()
                        .filter(one -> line.sold.equals(Integer.toString(one.number()))
                                && line.bundle.equals(one.id().toString()))
                        .findFirst();
    }

    private List<Part> parts(Bundle.Facts bundle) {
        List<BigDecimal> weights = BundleShares.weights(book.known(bundle.parts()));
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < bundle.parts().size(); i++) {
            Bundle.Part part = bundle.parts().get(i);
            String title = shelf.find(part.supplyId().toString()).orElseThrow().name();
            parts.add(new Part(title, part.supplyId(), part.quantity(), weights.get(i)));
        }
        return parts;
    }

    /** The parts as they were sold: shared as they were, so that the same price gives the same shares. */
    private List<Part> parts(SoldBundle sold) {
        return sold.parts().stream()
                .map(line -> new Part(
                        line.title(),
                        java.util.Objects.requireNonNull(line.supplyId()),
                        java.util.Objects.requireNonNull(line.content()),
                        BigDecimal.valueOf(line.price().minor())))
                .toList();
    }

    private static int number(List<SaleLine> lines) {
        return 1
                + lines.stream()
                        .map(SaleLine::bundle)
                        .mapToInt(bundle -> bundle == null ? 0 : bundle.bundleNumber())
                        .max()
                        .orElse(0);
    }

    private static BigDecimal quantity(SaleForm.Line line, String at, Answers answers) {
        Optional<Integer> quantity = answers.whole(at + "quantity", line.quantity);
        if (quantity.isEmpty() || quantity.get() < 1 || quantity.get() > MOST) {
            answers.wrong(at + "quantity", "selling.error.bundles");
            return BigDecimal.ONE;
        }
        return BigDecimal.valueOf(quantity.get());
    }
}
