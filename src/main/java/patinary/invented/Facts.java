package patinary.invented;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.UUID;
import patinary.money.Amount;

/** What the parts of an invented shop have in common: ids that can be told again, and when things are written down. */
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

    /** When she writes down what happened on a day. */
    static Instant evening(LocalDate day) {
        return day.atTime(18, 0).toInstant(ZoneOffset.UTC);
    }

    static Amount usd(long cents) {
        return Amount.of(cents);
    }
}
