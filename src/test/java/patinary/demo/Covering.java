package patinary.demo;

import static patinary.demo.Draws.usd;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** What she said of payouts in the invented shop, and the gross that was reported to her for a year. Draws no chance. */
final class Covering {

    /** The latest payouts of which nothing is said yet. */
    private static final int OPEN = 2;

    private record Moved(String document, String day, long cents) {}

    private final State shop;

    Covering(State shop) {
        this.shop = shop;
    }

    /** Each payout covers everything up to its day that none covers yet, where that adds up. */
    void cover() {
        for (String name : List.of(Catalogue.WEB, Catalogue.QUAY)) {
            String place = shop.id(name).toString();
            List<Moved> open = new ArrayList<>(moved(place));
            List<List<String>> payouts = shop.rows.of("payout").stream()
                    .filter(row -> row.get(4).equals(place))
                    .toList();
            for (List<String> payout : payouts.subList(0, payouts.size() - OPEN)) {
                cover(payout, place, open);
            }
        }
    }

    private void cover(List<String> payout, String place, List<Moved> open) {
        List<Moved> covered = open.stream()
                .filter(moved -> moved.day().compareTo(payout.get(1)) <= 0)
                .toList();
        long out = cents(payout.get(6)) + cents(payout.get(7));
        if (covered.stream().mapToLong(Moved::cents).sum() != out) {
            return;
        }
        shop.rows.add(
                "payout_cover", payout.get(0), LocalDate.parse(payout.get(1)).plusDays(2), usd(out));
        covered.forEach(
                moved -> shop.rows.add("payout_part", payout.get(0), moved.document(), place, usd(moved.cents())));
        open.removeAll(covered);
    }

    /** The card payments of 2025; the first of the next year was in the processor's report already. */
    void report() {
        String web = shop.id(Catalogue.WEB).toString();
        List<Moved> paid =
                paid(web).stream().sorted(Comparator.comparing(Moved::day)).toList();
        long sum = paid.stream()
                .filter(moved -> moved.day().startsWith("2025"))
                .mapToLong(Moved::cents)
                .sum();
        Moved early = paid.stream()
                .filter(moved -> moved.day().startsWith("2026-01-0"))
                .findFirst()
                .orElseThrow();
        UUID id = UUID.nameUUIDFromBytes("gross of 2025".getBytes(StandardCharsets.UTF_8));
        shop.rows.add(
                "gross_reported",
                id,
                web,
                "2025-01-01",
                "2025-12-31",
                usd(sum + early.cents()),
                false,
                "From the processor's yearly paper (invented)");
        shop.rows.add("gross_other_side", id, early.document());
    }

    /** What buyers paid into a balance with their sales. */
    private List<Moved> paid(String place) {
        Map<String, String> days = new LinkedHashMap<>();
        shop.rows.of("sale").forEach(sale -> days.put(sale.get(0), sale.get(1)));
        return shop.rows.of("sale_payment").stream()
                .filter(row -> row.get(2).equals("PLACE") && row.get(3).equals(place))
                .map(row -> new Moved(row.get(0), days.get(row.get(0)), cents(row.get(4))))
                .toList();
    }

    /** All that touched a balance but payouts, added up by document. */
    private List<Moved> moved(String place) {
        List<Moved> all = new ArrayList<>(paid(place));
        shop.rows.of("opening_balance").stream()
                .filter(row -> row.get(3).equals(place))
                .forEach(row -> all.add(new Moved(row.get(0), State.FIRST.toString(), cents(row.get(6)))));
        shop.rows.of("sale").stream()
                .filter(row -> row.get(12).equals(place))
                .forEach(row -> all.add(new Moved(row.get(0), row.get(1), -cents(row.get(11)))));
        shop.rows.of("refund").forEach(row -> {
            if (row.get(6).equals(place)) {
                all.add(new Moved(row.get(0), row.get(1), -cents(row.get(7)) - cents(row.get(8)) - lines(row.get(0))));
            }
            if (row.get(10).equals(place)) {
                all.add(new Moved(row.get(0), row.get(1), cents(row.get(9))));
            }
        });
        Map<String, Moved> sums = new LinkedHashMap<>();
        all.forEach(one ->
                sums.merge(one.document(), one, (a, b) -> new Moved(a.document(), a.day(), a.cents() + b.cents())));
        return sums.values().stream().filter(moved -> moved.cents() != 0).toList();
    }

    private long lines(String refund) {
        return shop.rows.of("refund_line").stream()
                .filter(row -> row.get(0).equals(refund))
                .mapToLong(row -> cents(row.get(5)))
                .sum();
    }

    private static long cents(String amount) {
        return amount.isEmpty() ? 0 : new BigDecimal(amount).movePointRight(2).longValueExact();
    }
}
