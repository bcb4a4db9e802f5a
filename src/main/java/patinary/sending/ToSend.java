package patinary.sending;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.measure.Dimension;
import patinary.money.Amount;

/**
 * A sale on the list of what to pack and send.
 *
 * @param sale what the sale and its parcel say
 * @param things pieces and supplies, in the order of the sale
 * @param wraps what it was packed in, as typed
 * @param cost what her table says that the chosen service takes; nothing where that cannot be told
 */
record ToSend(Head sale, List<Thing> things, List<String> wraps, Optional<Amount> cost) {

    /**
     * @param soldOn the day of the sale
     * @param postedOn the day it was sent or handed over; null as long as it was not
     * @param sentFrom where it is sent from, as she typed it; for the record alone
     * @param destination where it goes, as she typed it
     * @param carriageMinor what sending it cost so far
     */
    record Head(
            UUID saleId,
            LocalDate soldOn,
            String channel,
            String buyer,
            String orderReference,
            String note,
            @Nullable LocalDate postedOn,
            boolean pickedUp,
            @Nullable LocalDate packedOn,
            String sentFrom,
            String destination,
            String size,
            @Nullable BigDecimal weightG,
            @Nullable UUID serviceId,
            @Nullable String service,
            String tracking,
            long version,
            long carriageMinor) {

        /** How long the buyer has waited by a day. */
        public long days(LocalDate today) {
            return ChronoUnit.DAYS.between(soldOn, today);
        }
    }

    /**
     * A piece, or so many of a supply.
     *
     * @param pieceId null for a supply
     * @param size of the piece, as typed
     * @param grams null where it was not weighed
     */
    record Thing(
            UUID saleId,
            @Nullable UUID pieceId,
            String code,
            String title,
            String place,
            BigDecimal quantity,
            String size,
            @Nullable BigDecimal grams) {}

    /** What the things say of the parcel. */
    public Unpacked unpacked() {
        return Unpacked.of(things.stream()
                .map(thing -> new Unpacked.Thing(thing.grams(), thing.size()))
                .toList());
    }

    /** What a weight is a quantity of, for the page. */
    public Dimension mass() {
        return Dimension.MASS;
    }

    /** The pieces among them. */
    public List<UUID> pieces() {
        return things.stream().map(Thing::pieceId).filter(Objects::nonNull).toList();
    }

    /** The code of one of those pieces. */
    public String codeOf(UUID piece) {
        return things.stream()
                .filter(thing -> piece.equals(thing.pieceId()))
                .map(Thing::code)
                .findFirst()
                .orElse("");
    }

    /** Whether one tap can record what the service takes: it is known, and nothing was recorded yet. */
    public boolean isCostOpen() {
        return cost.isPresent() && sale.carriageMinor() == 0 && !sale.pickedUp();
    }
}
