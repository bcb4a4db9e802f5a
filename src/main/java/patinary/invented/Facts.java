package patinary.invented;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.exchange.NewArchive.Rows;
import patinary.money.Amount;

/** What the parts of an invented shop have in common: ids that can be told again, and how a document is written. */
record Facts(long seed, Lives lives, SupplyPlan plan, ChannelMonths months) {

    static final String BANK = "bank";
    static final String CASH = "cash";

    static Facts of(long seed, int pieces) {
        Lives lives = new Lives(seed, pieces);
        return new Facts(seed, lives, new SupplyPlan(seed, lives), new ChannelMonths(lives));
    }

    UUID id(String what, long number) {
        return Chance.id(seed, what, number);
    }

    /** The money place that a channel pays into. */
    UUID placeOf(Channel channel) {
        return channel.posts() ? id("balance", channel.ordinal()) : id(CASH, 0);
    }

    /** A document written down in the evening of its day. */
    static void document(Rows rows, UUID id, LocalDate day, @Nullable Object... more) {
        @Nullable Object[] all = new Object[more.length + 6];
        Instant evening = day.atTime(18, 0).toInstant(ZoneOffset.UTC);
        System.arraycopy(new Object[] {"id", id, "date", day, "recorded_at", evening}, 0, all, 0, 6);
        System.arraycopy(more, 0, all, 6, more.length);
        rows.add(all);
    }

    static Amount usd(long cents) {
        return Amount.of(cents);
    }
}
