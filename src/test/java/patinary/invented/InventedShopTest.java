package patinary.invented;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InventedShopTest {

    private static final long SEED = 7;

    @Test
    void theSameSeedGivesTheSameBytesAndAnotherOneOthers() throws IOException {
        assertThat(zip(SEED, 30)).isEqualTo(zip(SEED, 30)).isNotEqualTo(zip(SEED + 1, 30));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -1, InventedShop.MOST_PIECES + 1})
    void inventsNoShopOfNoSizeOrBeyondItsBounds(int pieces) {
        assertThatThrownBy(() -> new InventedShop(SEED, pieces))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(String.valueOf(pieces));
    }

    @Test
    void everyLifeGoesForwardInTimeAndEndsWithTheSpan() {
        for (PieceLife life : lives(2_000)) {
            LocalDate day = life.bought();
            for (PieceLife.Stretch stretch : life.bench()) {
                assertThat(stretch.day()).isAfter(day);
                day = stretch.day();
            }
            if (life.offer() != null) {
                assertThat(life.offer().day()).isAfter(day);
                forward(life.offer());
            }
            assertThat(day).isBeforeOrEqualTo(Span.LAST);
        }
    }

    private static void forward(PieceLife.Offer offer) {
        PieceLife.Sold sold = offer.sold();
        assertThat(offer.day()).isBeforeOrEqualTo(Span.LAST);
        if (offer.lowered() != null) {
            assertThat(offer.lowered()).isAfter(offer.day());
        }
        if (sold != null) {
            assertThat(offer.ended()).isNull();
            assertThat(sold.day()).isAfter(offer.day()).isBeforeOrEqualTo(Span.LAST);
            assertThat(offer.channels()).contains(sold.channel());
            if (sold.refunded() != null) {
                assertThat(sold.refunded()).isAfter(sold.day()).isBeforeOrEqualTo(Span.LAST);
            }
        }
    }

    /** Ten years of a home shop, as its owner would tell of it: bounds far from what chance alone could reach. */
    @Test
    void theSharesAreThoseOfAShop() {
        List<PieceLife> lives = lives(20_000);
        List<PieceLife.Offer> offers =
                lives.stream().map(PieceLife::offer).filter(Objects::nonNull).toList();
        long sold = offers.stream().filter(offer -> offer.sold() != null).count();
        long uses = lives.stream()
                .flatMap(life -> life.bench().stream())
                .mapToLong(stretch -> stretch.uses().size())
                .sum();

        assertThat(uses).isBetween(145_000L, 155_000L);
        assertThat(sold).isBetween(15_000L, 17_000L);
        assertThat(offers).filteredOn(offer -> offer.ended() != null).hasSizeGreaterThan(500);
        assertThat(offers).filteredOn(PieceLife.Offer::together).hasSizeBetween(200, 400);
        assertThat(offers)
                .filteredOn(offer -> offer.sold() != null && offer.sold().refunded() != null)
                .hasSizeBetween(350, 650);
    }

    /** What is bought covers what the uses take, or a count could find less than nothing. */
    @ParameterizedTest
    @ValueSource(ints = {1, 150, 3_000})
    void suppliesAreBoughtBeforeTheyAreUsed(int pieces) {
        Lives lives = new Lives(SEED, pieces);
        SupplyPlan plan = new SupplyPlan(SEED, lives);
        long[] left = new long[Assortment.SUPPLIES];
        for (int quarter = 0; quarter < Span.QUARTERS; quarter++) {
            for (SupplyPlan.Receipt receipt : plan.receipts(quarter)) {
                assertThat(Span.quarter(receipt.day())).isEqualTo(quarter);
                receipt.lines().forEach(line -> left[line.supply()] += (long) line.containers() * Assortment.CONTAINER);
            }
            for (int supply = 0; supply < Assortment.SUPPLIES; supply++) {
                assertThat(plan.found(quarter, supply)).isBetween(0L, left[supply]);
                left[supply] = plan.found(quarter, supply);
            }
        }
    }

    @Test
    void whatIsPaidOutIsWhatTheSalesOfTheMonthLeft() {
        Lives lives = new Lives(SEED, 500);
        ChannelMonths months = new ChannelMonths(lives);
        long[] sum = new long[Channel.values().length];
        lives.each(life -> {
            if (life.offer() != null && life.offer().sold() != null) {
                PieceLife.Sold sold = life.offer().sold();
                sum[sold.channel().ordinal()] += sold.price() + sold.shipping() - sold.fee();
                sum[sold.channel().ordinal()] -= sold.refunded() == null ? 0 : sold.price();
            }
        });

        for (Channel channel : Channel.values()) {
            long paid = 0;
            for (int month = 0; month < Span.MONTHS; month++) {
                paid += months.payout(channel, month);
            }
            // The last month is paid out after the end; a month of nothing but refunds is not paid out at all.
            assertThat(paid)
                    .isBetween(channel.posts() ? sum[channel.ordinal()] * 9 / 10 : 0, sum[channel.ordinal()] * 11 / 10);
        }
        assertThat(months.payout(Channel.STALL, 5)).isZero();
    }

    private static List<PieceLife> lives(int pieces) {
        List<PieceLife> lives = new ArrayList<>();
        new Lives(SEED, pieces).each(lives::add);
        return lives;
    }

    private static byte[] zip(long seed, int pieces) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new InventedShop(seed, pieces).write(bytes);
        return bytes.toByteArray();
    }
}
