package patinary.ledger;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a posting is about, so that reports can sum it another way.
 *
 * @param place the money place
 * @param category the expense category's key, or another plain word that tells rows of one account apart
 * @param piece the piece
 * @param supply the supply
 * @param party the source that store credit is held at
 * @param origin the document that the amount belongs to where another one caused the posting: the bench entry that a
 *     count corrects, the sale that a payment settles
 * @param estimated whether the amount rests on a remembered price or an estimated quantity
 */
public record Tags(
        @Nullable UUID place,
        @Nullable String category,
        @Nullable UUID piece,
        @Nullable UUID supply,
        @Nullable UUID party,
        @Nullable UUID origin,
        boolean estimated) {

    public static final Tags NONE = new Tags(null, null, null, null, null, null, false);

    public static Tags place(@Nullable UUID place) {
        return new Tags(place, null, null, null, null, null, false);
    }

    public static Tags category(@Nullable String category) {
        return new Tags(null, category, null, null, null, null, false);
    }

    public static Tags piece(UUID piece) {
        return new Tags(null, null, piece, null, null, null, false);
    }

    public static Tags supply(UUID supply) {
        return new Tags(null, null, null, supply, null, null, false);
    }

    public static Tags party(@Nullable UUID party) {
        return new Tags(null, null, null, null, party, null, false);
    }

    public static Tags origin(@Nullable UUID origin) {
        return new Tags(null, null, null, null, null, origin, false);
    }

    public Tags withPiece(UUID value) {
        return new Tags(place, category, value, supply, party, origin, estimated);
    }

    public Tags withSupply(UUID value) {
        return new Tags(place, category, piece, value, party, origin, estimated);
    }

    public Tags withOrigin(@Nullable UUID value) {
        return new Tags(place, category, piece, supply, party, value, estimated);
    }

    public Tags withCategory(@Nullable String value) {
        return new Tags(place, value, piece, supply, party, origin, estimated);
    }

    public Tags withEstimated(boolean value) {
        return new Tags(place, category, piece, supply, party, origin, value);
    }
}
