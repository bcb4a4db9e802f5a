package patinary.selling;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
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
 * @param taxPlaceId where it is taxed, or null where she did not say
 * @param fee what the channel kept
 * @param feePlaceId the money place that the fee left from
 * @param postedOn when it was sent off
 * @param lines what was sold
 * @param pieces the pieces of the lines
 * @param payments how it was paid; adds up to {@link SaleSums#due()}
 * @param wraps the supplies it was packed in
 * @param extras the discount code and the tip
 * @param undelivered pieces that the buyer ordered and never got; they never left the stock for this sale
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
        @Nullable UUID taxPlaceId,
        Amount fee,
        @Nullable UUID feePlaceId,
        @Nullable LocalDate postedOn,
        List<SaleLine> lines,
        List<SalePiece> pieces,
        List<Tender> payments,
        List<Wrap> wraps,
        SaleExtras extras,
        List<SalePiece> undelivered) {

    /** A sale of which everything was delivered, without a code or a tip, and of which is not said where it is taxed. */
    public SaleContent(
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
        this(
                date,
                note,
                channelId,
                buyer,
                orderReference,
                discount,
                shipping,
                tax,
                taxPassed,
                null,
                fee,
                feePlaceId,
                postedOn,
                lines,
                pieces,
                payments,
                wraps,
                SaleExtras.NONE,
                List.of());
    }

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
        return with(taxPlaceId, pieces, tenders, wraps, extras, undelivered);
    }

    /** The same sale, packed in these supplies. */
    public SaleContent packedIn(List<Wrap> supplies) {
        return with(taxPlaceId, pieces, payments, supplies, extras, undelivered);
    }

    /** The same sale, taxed in this place. */
    public SaleContent taxedIn(@Nullable UUID place) {
        return with(place, pieces, payments, wraps, extras, undelivered);
    }

    /** The same sale with this code and tip. */
    public SaleContent with(SaleExtras other) {
        return with(taxPlaceId, pieces, payments, wraps, other, undelivered);
    }

    /** All pieces that were ordered, whether or not they were delivered. */
    List<SalePiece> ordered() {
        return Stream.concat(pieces.stream(), undelivered.stream()).toList();
    }

    /** Whether nothing of it was delivered, nor will be. */
    public boolean nothingDelivered() {
        return !undelivered.isEmpty() && pieces.isEmpty() && lines.stream().allMatch(line -> line.supplyId() == null);
    }

    /** The same order without these pieces ever leaving; what is paid for them, and how, stays as it is. */
    public SaleContent withoutDelivering(Collection<UUID> kept) {
        List<SalePiece> gone = new ArrayList<>(undelivered);
        pieces.stream().filter(piece -> kept.contains(piece.pieceId())).forEach(gone::add);
        List<SalePiece> rest =
                pieces.stream().filter(piece -> !kept.contains(piece.pieceId())).toList();
        return with(taxPlaceId, rest, payments, wraps, extras, gone);
    }

    /** The same sale with what is owed to the owners of its pieces, each by its terms and the price after discounts. */
    SaleContent owing(Map<UUID, OwnerTerms> terms) {
        Map<UUID, Amount> shares = new HashMap<>();
        for (SaleSums.Part part : sums().parts()) {
            OwnerTerms own = part.piece() == null ? null : terms.get(part.piece());
            if (own != null) {
                shares.put(part.piece(), own.of(part.price()));
            }
        }
        return owingOwners(shares);
    }

    /** The same sale with these amounts owed to the owners of pieces, and nothing for all others. */
    public SaleContent owingOwners(Map<UUID, Amount> shares) {
        UnaryOperator<SalePiece> share = piece -> piece.owing(shares.get(piece.pieceId()));
        return with(
                taxPlaceId,
                pieces.stream().map(share).toList(),
                payments,
                wraps,
                extras,
                undelivered.stream().map(share).toList());
    }

    /** What is owed to the owners of pieces that were delivered. */
    public Amount owedToOwners() {
        return pieces.stream().map(SalePiece::owner).filter(Objects::nonNull).collect(Amount.sum());
    }

    /** What is owed to the owner of one of the pieces, or null where it is her own. */
    @Nullable
    Amount owedFor(@Nullable UUID piece) {
        return pieces.stream()
                .filter(sold -> sold.pieceId().equals(piece))
                .map(SalePiece::owner)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    /** The same order with all that was ordered delivered after all. */
    SaleContent deliveringAll() {
        return with(taxPlaceId, ordered(), payments, wraps, extras, List.of());
    }

    private SaleContent with(
            @Nullable UUID place,
            List<SalePiece> delivered,
            List<Tender> tenders,
            List<Wrap> supplies,
            SaleExtras beside,
            List<SalePiece> kept) {
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
                place,
                fee,
                feePlaceId,
                postedOn,
                lines,
                delivered,
                tenders,
                supplies,
                beside,
                kept);
    }
}
