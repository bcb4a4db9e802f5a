package patinary.selling;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import patinary.money.Amount;
import patinary.money.Shares;

/** A set taken apart: it ends, and each of its pieces is put up by itself. */
final class SetSplit {

    /** A piece with what it is to be called and to cost alone. */
    record Part(UUID piece, String title, Amount price) {}

    private SetSplit() {}

    /** What each piece would cost alone if the parts came to the price of the set; ties go by the pieces' ids, as on a sale. */
    static Map<UUID, Amount> shares(Offer.Content set) {
        List<Offer.OfferedPiece> sorted = set.pieces().stream()
                .sorted(Comparator.comparing(piece -> piece.pieceId().toString()))
                .toList();
        List<Amount> amounts = Shares.split(
                set.lastPrice(), sorted.stream().map(Offer.OfferedPiece::weight).toList());
        Map<UUID, Amount> shares = new LinkedHashMap<>();
        for (int i = 0; i < sorted.size(); i++) {
            shares.put(sorted.get(i).pieceId(), amounts.get(i));
        }
        return shares;
    }

    /** The set's last day: the day before, so that no piece is on two offers; its first where it begins that day. */
    static LocalDate lastDay(Offer.Content set, LocalDate day) {
        return day.isAfter(set.date()) ? day.minusDays(1) : set.date();
    }

    /** The offers of the parts from a day on, on the channels of the set. */
    static List<Offer.Content> alone(Offer.Content set, LocalDate day, List<Part> parts) {
        List<Offer.Content> alone = new ArrayList<>();
        for (Part part : parts) {
            alone.add(new Offer.Content(
                    day,
                    "",
                    part.title(),
                    null,
                    null,
                    List.of(new Offer.OfferedPiece(part.piece(), BigDecimal.ONE)),
                    set.channels(),
                    List.of(new Offer.Price(day, part.price())),
                    List.of()));
        }
        return alone;
    }
}
