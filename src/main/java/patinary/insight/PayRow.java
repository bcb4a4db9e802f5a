package patinary.insight;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * The most to pay for one kind of piece.
 *
 * @param group which pieces
 * @param pool what is known of them
 * @param budget the sum; null where the whole shop has sold too little for any figure
 * @param off what usually goes off a sale: fees, postage and packaging; null where there is no budget
 * @param low the lower limit of the price's 95 % interval, at least zero
 * @param high the upper limit, at least zero
 * @param words which sentence goes with it
 */
record PayRow(
        Group group,
        Pool pool,
        @Nullable Budget budget,
        @Nullable Amount off,
        @Nullable Amount low,
        @Nullable Amount high,
        Words words) {

    /** Which pieces: of a kind, of a style, of both; of the whole shop where both are null. */
    record Group(
            @Nullable UUID kindId, String kind, @Nullable UUID styleId, String style) {

        static final Group WHOLE = new Group(null, "", null, "");

        Group kindOnly() {
            return new Group(kindId, kind, null, "");
        }

        Group styleOnly() {
            return new Group(null, "", styleId, style);
        }

        public boolean isWhole() {
            return kindId == null && styleId == null;
        }
    }

    /** The sentence beside a figure. */
    enum Words {
        /** Too little sold in the whole shop. */
        NONE,
        /** Not worth buying at any price. */
        NOT_WORTH,
        /** Few of its own sold, and mostly the whole shop's figure. */
        MOSTLY_SHOP,
        /** Few of its own sold. */
        FEW,
        /** Enough of its own. */
        FIRM
    }

    /** The price; null where there is none. */
    public @Nullable Amount most() {
        return budget == null || budget.most().isNegative() ? null : budget.most();
    }

    /** What buyers may be expected to pay for one, without tax; null where there is no budget. */
    public @Nullable Amount paid() {
        return budget == null || off == null ? null : budget.net().plus(off);
    }

    public boolean few() {
        return words == Words.NONE || pool.net().count() < WhatToPay.FEW;
    }
}
