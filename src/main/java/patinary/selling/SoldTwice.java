package patinary.selling;

import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.validation.DirectFieldBindingResult;
import patinary.ledger.Way;
import patinary.money.Amount;

/** Finds the orders that have what another order wants too, and shows them side by side. */
@Component
class SoldTwice {

    /**
     * One of the orders.
     *
     * @param saleId nothing while it is not recorded
     * @param codes the pieces that both want
     * @param price what the buyer pays for those, without tax
     * @param due all that the buyer pays the shop
     * @param owed how much of it is not paid yet
     */
    record Side(
            @Nullable UUID saleId,
            LocalDate date,
            String channel,
            String buyer,
            String order,
            String codes,
            Amount price,
            Amount due,
            Amount owed,
            @Nullable LocalDate sent,
            List<UUID> pieces) {

        public Amount paid() {
            return due.minus(owed);
        }
    }

    /** A new order that wants what others have. */
    record Clash(@Nullable Side own, List<Side> others) {

        List<UUID> pieces() {
            return others.stream().flatMap(other -> other.pieces().stream()).toList();
        }
    }

    private record Taken(UUID saleId, UUID pieceId, String code) {}

    private final SaleAnswers reader;
    private final SellingDocuments documents;
    private final ChannelBook channels;
    private final BuyerMoney buyers;
    private final JdbcClient jdbc;

    SoldTwice(
            SaleAnswers reader, SellingDocuments documents, ChannelBook channels, BuyerMoney buyers, JdbcClient jdbc) {
        this.reader = reader;
        this.documents = documents;
        this.channels = channels;
        this.buyers = buyers;
        this.jdbc = jdbc;
    }

    /** The clash of a new sale's form with what is recorded, where there is one. */
    Optional<Clash> of(SaleForm form) {
        UUID own = FormId.read(form.id);
        List<String> codes = form.lines.stream()
                .flatMap(line -> PieceFinder.codes(line.codes).stream())
                .toList();
        List<Side> others = others(codes, own);
        if (others.isEmpty()) {
            return Optional.empty();
        }
        List<UUID> pieces =
                others.stream().flatMap(other -> other.pieces().stream()).toList();
        String wanted = others.stream().map(Side::codes).collect(Collectors.joining(" "));
        Side side = reader.read(form, new DirectFieldBindingResult(form, "form"), own, null)
                .map(sale -> side(null, sale, wanted, owed(sale), pieces))
                .orElse(null);
        return Optional.of(new Clash(side, others));
    }

    private List<Side> others(Collection<String> codes, UUID own) {
        if (codes.isEmpty()) {
            return List.of();
        }
        Map<UUID, List<Taken>> bySale =
                jdbc.sql("""
                        select s.sale_id, s.piece_id, p.code
                        from piece p
                        join piece_state s on s.piece_id = p.id
                        where upper(p.code) in (:codes) and s.state = 'SOLD' and s.sale_id <> :own
                        order by p.code""").param("codes", codes).param("own", own).query(Taken.class).list().stream()
                        .collect(Collectors.groupingBy(Taken::saleId, LinkedHashMap::new, Collectors.toList()));
        return bySale.entrySet().stream()
                .map(entry -> recorded(entry.getKey(), entry.getValue()))
                .toList();
    }

    private Side recorded(UUID saleId, List<Taken> taken) {
        SaleContent sale = documents.read(Sale.class, saleId, Sale::content).orElseThrow();
        String codes = taken.stream().map(Taken::code).collect(Collectors.joining(" "));
        return side(
                saleId,
                sale,
                codes,
                buyers.owed(saleId),
                taken.stream().map(Taken::pieceId).toList());
    }

    private Side side(@Nullable UUID saleId, SaleContent sale, String codes, Amount owed, List<UUID> pieces) {
        Amount price = sale.sums().parts().stream()
                .filter(part -> part.piece() != null && pieces.contains(part.piece()))
                .map(SaleSums.Part::price)
                .collect(Amount.sum());
        return new Side(
                saleId,
                sale.date(),
                channels.find(sale.channelId()).map(ChannelFacts::name).orElse(""),
                sale.buyer(),
                sale.orderReference(),
                codes,
                price,
                sale.sums().due(),
                owed,
                sale.postedOn(),
                pieces);
    }

    private static Amount owed(SaleContent sale) {
        return sale.payments().stream()
                .filter(tender -> tender.way() == Way.OWED)
                .map(tender -> Objects.requireNonNull(tender.amount()))
                .collect(Amount.sum());
    }
}
