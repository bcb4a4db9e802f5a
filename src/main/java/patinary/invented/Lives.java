package patinary.invented;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Makes up what becomes of each piece: buying all year round, two stretches of work, prices by kind and style, waiting
 * times by kind, style, season and number of channels, a tail that never sells, finishes that fail, sets, lowered prices,
 * withdrawals and things that come back. All shares are invented.
 */
final class Lives {

    static final int STRETCHES = 2;

    /** Days after buying by which both pieces of a set are done at the latest: two waits of 24. */
    private static final int BOTH_DONE = 48;

    private static final double SETS = 0.03;
    private static final double NEVER = 0.16;
    private static final double MISHAPS = 0.03;
    private static final double WITHDRAWN = 0.4;
    private static final double REFUNDED = 0.03;
    private static final int PATIENCE_ENDS = 540;
    private static final Set<Month> SLOW = EnumSet.of(Month.JANUARY, Month.FEBRUARY, Month.JULY);

    private final long seed;
    private final int pieces;

    Lives(long seed, int pieces) {
        this.seed = seed;
        this.pieces = pieces;
    }

    int pieces() {
        return pieces;
    }

    int receipts() {
        return (pieces + 1) / 2;
    }

    void each(Consumer<PieceLife> lives) {
        for (int number = 0; number < pieces; number++) {
            lives.accept(of(number));
        }
    }

    LocalDate boughtOn(int receipt) {
        return Span.FIRST.plusDays((long) receipt * Span.DAYS / receipts());
    }

    private boolean isSet(int receipt) {
        return 2 * receipt + 1 < pieces && new Chance(seed, "set", receipt).happens(SETS);
    }

    PieceLife of(int number) {
        Chance chance = new Chance(seed, "piece", number);
        LocalDate bought = boughtOn(number / 2);
        int kind = chance.favoured(Assortment.KINDS.size());
        int style = chance.favoured(Assortment.STYLES.size());
        long price = Math.round(Assortment.worth(kind) * Assortment.liking(style) * chance.around(0.35));
        long paid = Math.max(50, Math.round(price * chance.factor(0.06, 0.3)));
        List<PieceLife.Stretch> bench = bench(chance, bought, style);
        int material = chance.between(0, Assortment.MATERIALS.size() - 1);
        boolean first = number % 2 == 0;
        boolean set = isSet(number / 2);
        PieceLife.Offer offer = bench.size() < STRETCHES || set && !first
                ? null
                : offer(
                        chance,
                        set,
                        set
                                ? bought.plusDays(BOTH_DONE)
                                : bench.get(STRETCHES - 1).day(),
                        kind,
                        style,
                        set ? 2 * price : price);
        return new PieceLife(number, bought, kind, style, material, paid, bench, offer);
    }

    private static List<PieceLife.Stretch> bench(Chance chance, LocalDate bought, int style) {
        List<PieceLife.Stretch> stretches = new ArrayList<>();
        LocalDate day = bought;
        for (int i = 0; i < STRETCHES; i++) {
            day = day.plusDays(chance.between(1, 24));
            List<PieceLife.Drop> uses = new ArrayList<>();
            int many = chance.between(3, 4) + (i == 0 ? 0 : chance.between(0, 1));
            int from = chance.between(0, 6);
            for (int use = 0; use < many; use++) {
                int supply = (style * 7 + from + use * 3) % Assortment.SUPPLIES;
                uses.add(new PieceLife.Drop(supply, chance.between(5, 40)));
            }
            boolean mishap = chance.happens(MISHAPS);
            int minutes = chance.between(15, 120);
            if (Span.holds(day)) {
                stretches.add(new PieceLife.Stretch(day, minutes, List.copyOf(uses), mishap));
            }
        }
        return List.copyOf(stretches);
    }

    private static PieceLife.@Nullable Offer offer(
            Chance chance, boolean together, LocalDate ready, int kind, int style, long price) {
        LocalDate day = ready.plusDays(chance.between(1, 12));
        List<Channel> channels = channels(chance);
        double mean = Assortment.patience(kind, style)
                * (SLOW.contains(day.getMonth()) ? 1.5 : 1)
                / Math.sqrt(channels.size());
        boolean sells = !chance.happens(NEVER);
        LocalDate sold = day.plusDays(1 + Math.round(chance.waiting(mean)));
        LocalDate lowered = day.plusDays(90);
        boolean lowers = chance.happens(0.5);
        boolean gives = chance.happens(WITHDRAWN);
        LocalDate ended = day.plusDays(PATIENCE_ENDS + chance.between(0, 200));
        boolean goes = sells && Span.holds(sold) && (!gives || sold.isBefore(ended));
        boolean lower = lowers && Span.holds(lowered) && (!goes || lowered.isBefore(sold));
        long low = Math.max(100, Math.round(price * 0.85));
        PieceLife.Sold sale = goes ? sold(chance, sold, channels, lower ? low : price) : null;
        boolean ends = !goes && gives && Span.holds(ended);
        return Span.holds(day)
                ? new PieceLife.Offer(
                        day, together, channels, price, lower ? lowered : null, low, ends ? ended : null, sale)
                : null;
    }

    private static List<Channel> channels(Chance chance) {
        List<Channel> all = new ArrayList<>(List.of(Channel.values()));
        all.remove(chance.between(0, all.size() - 1));
        if (chance.happens(0.5)) {
            all.remove(chance.between(0, all.size() - 1));
        }
        return List.copyOf(all);
    }

    private static PieceLife.Sold sold(Chance chance, LocalDate day, List<Channel> channels, long asked) {
        Channel channel = channels.get(chance.between(0, channels.size() - 1));
        long price = chance.happens(0.2) ? Math.round(asked * 0.9) : asked;
        long shipping = channel.posts() ? 100L * chance.between(6, 18) : 0;
        long carriage = channel.posts() ? shipping + chance.between(-150, 250) : 0;
        LocalDate back = day.plusDays(chance.between(4, 20));
        boolean refunded = chance.happens(REFUNDED) && Span.holds(back);
        return new PieceLife.Sold(
                day, channel, price, shipping, channel.fee(price + shipping), carriage, refunded ? back : null);
    }
}
