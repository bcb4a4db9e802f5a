package patinary.covering;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;

/**
 * A payout that was right, and in which one thing is wrong now.
 *
 * @param way what is wrong
 * @param off by how much it does not add up, in cents; zero where only a day is wrong
 */
record Broken(String way, Cover cover, long off) {

    static final int WAYS = 9;

    static Broken of(int way, InventedYear.Out out, InventedYear year, Random random) {
        List<Movement> right = out.covers();
        Movement one = right.get(random.nextInt(right.size()));
        long x = 1 + random.nextInt(900);
        return switch (way) {
            case 0 -> paid("the amount is off", out, x * (random.nextBoolean() ? 1 : -1), 0);
            case 1 -> paid("the fee is off", out, 0, x);
            case 2 -> with("a sale is there twice", out, right, plus(right, copy(one)), -one.amountMinor());
            case 3 -> with("a sale was removed", out, right, minus(right, one), one.amountMinor());
            case 4 -> {
                Movement refund = right.stream()
                        .filter(m -> m.kind().equals("REFUND"))
                        .findFirst()
                        .orElse(one);
                yield with("a refund was removed", out, right, minus(right, refund), refund.amountMinor());
            }
            case 5 ->
                with(
                        "a sign is turned",
                        out,
                        right,
                        instead(right, one, -one.amountMinor(), one.docDate()),
                        2 * one.amountMinor());
            case 6 ->
                with(
                        "a day is after the payout",
                        out,
                        right,
                        instead(right, one, one.amountMinor(), out.day().plusDays(1)),
                        0);
            case 7 -> {
                Movement other =
                        year.movements((out.channel() + 1) % year.channels).get(0);
                yield with("a sale of another balance is ticked", out, right, plus(right, other), -other.amountMinor());
            }
            default ->
                with("a sale was changed", out, right, instead(right, one, one.amountMinor() + x, one.docDate()), -x);
        };
    }

    private static Broken paid(String way, InventedYear.Out out, long amount, long fee) {
        return new Broken(
                way,
                new Cover(facts(out, amount, fee, sum(out.covers())), parts(out, out.covers(), out.covers())),
                amount + fee);
    }

    /** What was said is kept as it was said; the movements are as they are now. */
    private static Broken with(String way, InventedYear.Out out, List<Movement> right, List<Movement> now, long off) {
        long total = now.size() > right.size() ? sum(now) : sum(right);
        return new Broken(way, new Cover(facts(out, 0, 0, total), parts(out, right, now)), off);
    }

    static PayoutFacts facts(InventedYear.Out out, long amount, long fee, long total) {
        return new PayoutFacts(
                out.id(),
                out.day(),
                new UUID(7, out.channel()),
                "",
                "",
                out.amount() + amount,
                out.fee() + fee,
                out.day(),
                total);
    }

    private static List<Part> parts(InventedYear.Out out, List<Movement> right, List<Movement> now) {
        return now.stream()
                .map(m -> new Part(
                        out.id(),
                        m,
                        right.stream()
                                .filter(r -> r.documentId().equals(m.documentId()))
                                .findFirst()
                                .orElse(m)
                                .amountMinor()))
                .toList();
    }

    private static long sum(List<Movement> movements) {
        return Movement.sum(movements).minor();
    }

    private static Movement copy(Movement of) {
        UUID id = UUID.nameUUIDFromBytes(of.documentId().toString().getBytes(java.nio.charset.StandardCharsets.UTF_8));
        return new Movement(id, of.docDate(), of.kind(), of.saleId(), "", "", of.amountMinor());
    }

    private static List<Movement> plus(List<Movement> all, Movement one) {
        List<Movement> more = new ArrayList<>(all);
        more.add(one);
        return more;
    }

    private static List<Movement> minus(List<Movement> all, Movement one) {
        return all.stream().filter(m -> m != one).toList();
    }

    private static List<Movement> instead(List<Movement> all, Movement one, long cents, LocalDate day) {
        return all.stream()
                .map(m -> m != one ? m : new Movement(m.documentId(), day, m.kind(), m.saleId(), "", "", cents))
                .toList();
    }
}
