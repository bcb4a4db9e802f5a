package patinary.covering;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;

/**
 * An invented year of sales over some channels, with refunds, layaways that are paid in parts, and payouts; with what is true of
 * it, against which the shop's own sums are held. The same seed gives the same year. All amounts are cents. What each payout
 * covers is known, because the year makes the payout from it.
 */
final class InventedYear {

    static final LocalDate FIRST = LocalDate.of(2025, 1, 1);
    static final LocalDate LAST = LocalDate.of(2025, 12, 31);

    /** A sale: a part of it may be paid elsewhere, and another be owed and paid later. */
    record Sold(
            UUID id,
            int channel,
            LocalDate day,
            long price,
            long shipping,
            long tax,
            boolean passed,
            long fee,
            long paidHere,
            long elsewhere,
            long owed) {}

    record Back(UUID id, Sold sale, LocalDate day, long amount, long tax, long feeBack) {}

    record Later(UUID id, Sold sale, LocalDate day, long amount) {}

    record Out(UUID id, int channel, LocalDate day, long amount, long fee, List<Movement> covers) {}

    final List<Sold> sales = new ArrayList<>();
    final List<Back> refunds = new ArrayList<>();
    final List<Later> payments = new ArrayList<>();
    final List<Out> payouts = new ArrayList<>();
    final int channels;

    private final Random random;

    InventedYear(long seed, int howMany, int channels) {
        random = new Random(seed);
        this.channels = channels;
        for (int i = 0; i < howMany; i++) {
            sell();
        }
        for (int channel = 0; channel < channels; channel++) {
            payOut(channel);
        }
    }

    private void sell() {
        int channel = random.nextInt(channels);
        LocalDate day = FIRST.plusDays(random.nextInt(365));
        boolean passed = channel % 2 == 1;
        long price = 500 + random.nextInt(20000);
        long shipping = random.nextBoolean() ? 0 : 400 + random.nextInt(1500);
        long tax = random.nextInt(4) == 0 ? 0 : (price + shipping) * 6 / 100;
        long fee = (price + shipping) * 9 / 100 + 25;
        long due = price + shipping + (passed ? 0 : tax);
        boolean layaway = random.nextInt(6) == 0;
        long first = layaway ? due / 3 : due;
        long elsewhere = !layaway && random.nextInt(12) == 0 ? due / 2 : 0;
        Sold sold = new Sold(
                id(), channel, day, price, shipping, tax, passed, fee, first - elsewhere, elsewhere, due - first);
        sales.add(sold);
        if (layaway) {
            long half = sold.owed() / 2;
            payments.add(new Later(id(), sold, within(day.plusDays(10 + random.nextInt(20))), half));
            payments.add(new Later(id(), sold, within(day.plusDays(40 + random.nextInt(20))), sold.owed() - half));
        } else if (random.nextInt(10) == 0) {
            long back = price / (1 + random.nextInt(3));
            long taxBack = passed ? 0 : tax / 3;
            refunds.add(new Back(id(), sold, within(day.plusDays(1 + random.nextInt(14))), back, taxBack, fee / 4));
        }
    }

    /** Each month, what the balance holds of the days up to the 23rd; now and then a little is kept of it. */
    private void payOut(int channel) {
        List<Movement> open = new ArrayList<>(movements(channel));
        for (int month = 1; month <= 12; month++) {
            LocalDate cut = LocalDate.of(2025, month, 23);
            List<Movement> covers =
                    open.stream().filter(m -> !m.docDate().isAfter(cut)).toList();
            long sum = Movement.sum(covers).minor();
            if (sum > 5000) {
                long fee = random.nextBoolean() ? 0 : 25;
                payouts.add(new Out(id(), channel, cut.plusDays(5), sum - fee, fee, covers));
                open.removeAll(covers);
            }
        }
    }

    /** What touched the balance of a channel, worked out from what happened and from nothing of the shop's own sums. */
    List<Movement> movements(int channel) {
        Map<UUID, Movement> all = new LinkedHashMap<>();
        sales.stream()
                .filter(s -> s.channel() == channel)
                .forEach(s -> put(all, s.id(), s.day(), "SALE", s, s.paidHere() - s.fee()));
        refunds.stream()
                .filter(r -> r.sale().channel() == channel)
                .forEach(r -> put(all, r.id(), r.day(), "REFUND", r.sale(), r.feeBack() - r.amount() - r.tax()));
        payments.stream()
                .filter(p -> p.sale().channel() == channel)
                .forEach(p -> put(all, p.id(), p.day(), "PAYMENT", p.sale(), p.amount()));
        return all.values().stream()
                .sorted(Comparator.comparing(Movement::docDate)
                        .thenComparing(m -> m.documentId().toString()))
                .toList();
    }

    private static void put(Map<UUID, Movement> all, UUID id, LocalDate day, String kind, Sold sale, long cents) {
        if (cents != 0) {
            all.put(id, new Movement(id, day, kind, sale.id(), "", "", cents));
        }
    }

    private static LocalDate within(LocalDate day) {
        return day.isAfter(LAST) ? LAST : day;
    }

    private UUID id() {
        return new UUID(random.nextLong(), random.nextLong());
    }
}
