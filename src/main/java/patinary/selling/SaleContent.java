package patinary.selling;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.ledger.Tender;
import patinary.money.Amount;

/**
 * Everything a sale says.
 *
 * @param date the day of the sale
 * @param note free text
 * @param channelId where it was sold
 * @param buyer whom to, free text
 * @param orderReference the channel's own number for it
 * @param discount taken off the whole, shared over the lines by price
 * @param shipping what the buyer paid for shipping, without tax
 * @param tax sales tax the buyer paid
 * @param taxPassed whether the channel collected the tax and pays it over itself
 * @param fee what the channel kept
 * @param feePlaceId the money place that the fee left from
 * @param postedOn when it was sent off
 * @param lines what was sold
 * @param pieces the pieces of the lines
 * @param payments how it was paid; adds up to {@link SaleSums#due()}
 * @param wraps the supplies it was packed in
 */
public record SaleContent(
        LocalDate date,
        String note,
        UUID channelId,
        String buyer,
        String orderReference,
        Amount discount,
        Amount shipping,
        Amount tax,
        boolean taxPassed,
        Amount fee,
        @Nullable UUID feePlaceId,
        @Nullable LocalDate postedOn,
        List<SaleLine> lines,
        List<SalePiece> pieces,
        List<Tender> payments,
        List<Wrap> wraps) {

    public SaleSums sums() {
        return SaleSums.of(this);
    }

    /** How much of a supply was sold, in its base unit. */
    BigDecimal soldOf(UUID supply) {
        return lines.stream()
                .filter(line -> supply.equals(line.supplyId()))
                .map(SaleLine::supplyQuantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** The bundles that were sold, in order. */
    public List<SoldBundle> bundles() {
        return lines.stream()
                .map(SaleLine::bundle)
                .filter(Objects::nonNull)
                .map(SaleLine.OfBundle::bundleNumber)
                .distinct()
                .map(number -> new SoldBundle(
                        lines.stream().filter(line -> line.isOf(number)).toList()))
                .toList();
    }

    /** The same sale, paid in these ways. */
    SaleContent paidBy(List<Tender> tenders) {
        return with(tenders, wraps);
    }

    /** The same sale, packed in these supplies. */
    public SaleContent packedIn(List<Wrap> supplies) {
        return with(payments, supplies);
    }

    private SaleContent with(List<Tender> tenders, List<Wrap> supplies) {
        return new SaleContent(
                date,
                note,
                channelId,
                buyer,
                orderReference,
                discount,
                shipping,
                tax,
                taxPassed,
                fee,
                feePlaceId,
                postedOn,
                lines,
                pieces,
                tenders,
                supplies);
    }
}
