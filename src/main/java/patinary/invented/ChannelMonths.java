package patinary.invented;

import java.time.LocalDate;
import java.util.Objects;

/** What each month brought on each channel, which is paid out in the month after. Amounts in cents. */
final class ChannelMonths {

    private final long[][] left = new long[Channel.values().length][Span.MONTHS];

    ChannelMonths(Lives lives) {
        lives.each(life -> {
            if (life.offer() != null && life.offer().sold() != null) {
                add(life.offer().sold());
            }
        });
    }

    private void add(PieceLife.Sold sold) {
        long[] months = left[sold.channel().ordinal()];
        months[Span.month(sold.day())] += kept(sold);
        if (sold.refunded() != null) {
            months[Span.month(Objects.requireNonNull(sold.refunded()))] -= sold.price();
        }
    }

    /** What a sale leaves with its channel. */
    static long kept(PieceLife.Sold sold) {
        return sold.total() - sold.fee();
    }

    /** What is paid out for a month; nothing for the stall, whose money she has at once, and for the last month. */
    long payout(Channel channel, int month) {
        boolean paid = channel.posts() && month >= 0 && month < Span.MONTHS - 1;
        return paid ? Math.max(0, left[channel.ordinal()][month]) : 0;
    }

    static LocalDate paidOn(int month) {
        return Span.FIRST.plusMonths(month + 1L).plusDays(4);
    }

    /** The number of the payout that covers a day on a channel. */
    static int number(Channel channel, int month) {
        return channel.ordinal() * Span.MONTHS + month;
    }
}
