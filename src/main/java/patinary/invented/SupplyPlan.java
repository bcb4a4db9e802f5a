package patinary.invented;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * What is bought of each supply, and what is found when it is counted at the end of each quarter. Everything is bought a
 * quarter ahead of its use; what a count finds differs from what the uses leave, since uses are by eye.
 */
final class SupplyPlan {

    /** So many containers of a supply on one receipt. */
    record Line(int supply, int containers) {

        long price() {
            return containers * Assortment.price(supply);
        }
    }

    /** A receipt for supplies; numbered through all quarters. */
    record Receipt(int number, LocalDate day, List<Line> lines) {

        long total() {
            return lines.stream().mapToLong(Line::price).sum();
        }
    }

    private static final int PIECES_TO_A_RECEIPT = 10;
    private static final int LEAST_LINES = 4;

    private final int perQuarter;
    private final int lines;
    private final long[][] containers = new long[Span.QUARTERS][Assortment.SUPPLIES];
    private final long[][] found = new long[Span.QUARTERS][Assortment.SUPPLIES];

    SupplyPlan(long seed, Lives lives) {
        perQuarter = Math.max(1, lives.pieces() / PIECES_TO_A_RECEIPT / Span.QUARTERS);
        lines = Math.max(LEAST_LINES, (Assortment.SUPPLIES + perQuarter - 1) / perQuarter);
        long[][] used = used(lives);
        for (int supply = 0; supply < Assortment.SUPPLIES; supply++) {
            double stock = 0;
            for (int quarter = 0; quarter < Span.QUARTERS; quarter++) {
                long ahead = quarter + 1 < Span.QUARTERS ? used[quarter + 1][supply] : 0;
                double wanted = 1.15 * (used[quarter][supply] + ahead) - stock;
                containers[quarter][supply] = Math.max(0, (long) Math.ceil(wanted / Assortment.CONTAINER));
                stock += containers[quarter][supply] * (double) Assortment.CONTAINER;
                Chance chance = new Chance(seed, "count", (long) quarter * Assortment.SUPPLIES + supply);
                stock = Math.max(0, stock - used[quarter][supply] * chance.factor(0.92, 1.08));
                found[quarter][supply] = Math.round(stock);
            }
        }
    }

    private static long[][] used(Lives lives) {
        long[][] used = new long[Span.QUARTERS][Assortment.SUPPLIES];
        lives.each(life -> life.bench()
                .forEach(stretch -> stretch.uses()
                        .forEach(use -> used[Span.quarter(stretch.day())][use.supply()] += use.quantity())));
        return used;
    }

    /** What the count at the end of a quarter finds, in the supply's unit. */
    long found(int quarter, int supply) {
        return found[quarter][supply];
    }

    /** The receipts of a quarter that have anything on them. */
    List<Receipt> receipts(int quarter) {
        List<Receipt> receipts = new ArrayList<>();
        int[] met = new int[Assortment.SUPPLIES];
        for (int i = 0; i < perQuarter; i++) {
            List<Line> bought = new ArrayList<>();
            for (int line = 0; line < lines; line++) {
                int supply = (int) (((long) i * lines + line) % Assortment.SUPPLIES);
                int many = share(containers[quarter][supply], met[supply]++, meetings(supply));
                if (many > 0) {
                    bought.add(new Line(supply, many));
                }
            }
            LocalDate day = Span.firstOfQuarter(quarter).plusDays(i % 28);
            if (!bought.isEmpty()) {
                receipts.add(new Receipt(quarter * perQuarter + i, day, List.copyOf(bought)));
            }
        }
        return receipts;
    }

    /** On how many lines of a quarter a supply may stand. */
    private int meetings(int supply) {
        long all = (long) perQuarter * lines;
        return (int) (all / Assortment.SUPPLIES + (supply < all % Assortment.SUPPLIES ? 1 : 0));
    }

    private static int share(long whole, int number, int of) {
        return (int) (whole * (number + 1) / of - whole * number / of);
    }
}
