package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;

/** A count of money is believed, and the difference follows from everything dated before it. */
class MoneyCountsTest {

    private static final UUID BOX = Story.name("cash box");
    private static final UUID BANK = Story.name("bank");

    private final List<DocumentMoves> documents = new ArrayList<>();

    /** Float 50.00 from the bank, sales of 42.00 and 18.50, then 108.00 counted: 110.50 must be there, so 2.50 short. */
    @Test
    void whatIsMissingIsShort() {
        move(1, BANK, BOX, 5_000);
        sale(1, 4_200);
        sale(1, 1_850);
        UUID count = count(1, 10_800);

        assertThat(on(count, Account.MONEY)).isEqualTo(-250);
        assertThat(on(count, Account.ROUNDING)).isEqualTo(250);
        assertThat(held(BOX)).isEqualTo(10_800);
        assertThat(held(BANK)).isEqualTo(-5_000);
    }

    @Test
    void whatIsTooMuchIsOver() {
        sale(1, 4_200);
        UUID count = count(1, 4_300);

        assertThat(on(count, Account.MONEY)).isEqualTo(100);
        assertThat(on(count, Account.ROUNDING)).isEqualTo(-100);
        assertThat(postings())
                .filteredOn(p -> p.account() == Account.ROUNDING)
                .allMatch(p -> "cash_short_or_over".equals(p.tags().category()));
    }

    @Test
    void aCountThatAgreesPostsNothing() {
        sale(1, 4_200);
        UUID count = count(1, 4_200);

        assertThat(postings()).noneMatch(p -> p.document().id().equals(count));
    }

    /** The 20.00 that the count found over was a sale nobody had typed in; typed in late, it explains the count. */
    @Test
    void aLateTypedSaleExplainsTheCountOfItsDay() {
        sale(1, 4_200);
        UUID count = count(1, 6_200);
        UUID next = count(3, 6_000);
        assertThat(on(count, Account.MONEY)).isEqualTo(2_000);
        assertThat(on(next, Account.MONEY)).isEqualTo(-200);

        sale(1, 2_000);

        assertThat(on(count, Account.MONEY)).isZero();
        assertThat(on(next, Account.MONEY)).isEqualTo(-200);
        assertThat(held(BOX)).isEqualTo(6_000);
    }

    /** What happens between two counts is measured against the first, not against all of the past. */
    @Test
    void theNextCountStartsFromTheOneBefore() {
        sale(1, 10_000);
        count(1, 9_000);
        sale(2, 1_000);
        UUID second = count(2, 10_000);

        assertThat(on(second, Account.MONEY)).isZero();
    }

    /** Whatever was typed in, and in whatever order: after each count the box holds what was counted, and all adds to zero. */
    @Property(tries = 500)
    void countsAreBelieved(@ForAll long seed, @ForAll @IntRange(min = 1, max = 30) int size) {
        documents.clear();
        Random random = new Random(seed);
        for (int i = 0; i < size; i++) {
            int day = 1 + random.nextInt(6);
            switch (random.nextInt(3)) {
                case 0 -> sale(day, random.nextInt(9_000));
                case 1 -> move(day, BANK, BOX, random.nextInt(9_000));
                default -> count(day, random.nextInt(9_000));
            }
        }
        List<Posting> inOrder = postings();
        Collections.shuffle(documents, random);

        assertThat(postings()).isEqualTo(inOrder);
        assertThat(Replay.of(StockMethod.FIFO, documents).problems()).isEmpty();
        for (DocumentMoves document : documents) {
            if (document.moves().get(0) instanceof Move.MoneyCounted counted) {
                long then = inOrder.stream()
                        .filter(p -> p.account() == Account.MONEY
                                && counted.place().equals(p.tags().place()))
                        .filter(p -> p.document().compareTo(document.document()) <= 0)
                        .mapToLong(p -> p.amount().minor())
                        .sum();
                assertThat(then).isEqualTo(counted.amount().minor());
            }
        }
    }

    private UUID sale(int day, long cents) {
        return add(
                day,
                DocumentKind.SALE,
                new Move.Post(Account.MONEY, Tags.place(BOX), Amount.of(cents)),
                new Move.Post(Account.SALES, Tags.NONE, Amount.of(-cents)));
    }

    private UUID move(int day, UUID from, UUID to, long cents) {
        return add(
                day,
                DocumentKind.MONEY_MOVE,
                new Move.Post(Account.MONEY, Tags.place(to), Amount.of(cents)),
                new Move.Post(Account.MONEY, Tags.place(from), Amount.of(-cents)));
    }

    private UUID count(int day, long cents) {
        return add(day, DocumentKind.TILL_COUNT, new Move.MoneyCounted(BOX, Amount.of(cents)));
    }

    private UUID add(int day, DocumentKind kind, Move... moves) {
        UUID id = new UUID(7, documents.size() + 1L);
        LocalDate date = Story.day(day);
        documents.add(new DocumentMoves(new DocumentRef(id, kind, date), List.of(moves)));
        return id;
    }

    private List<Posting> postings() {
        return Replay.of(StockMethod.FIFO, documents).postings();
    }

    private long on(UUID document, Account account) {
        return postings().stream()
                .filter(p -> p.document().id().equals(document) && p.account() == account)
                .mapToLong(p -> p.amount().minor())
                .sum();
    }

    private long held(UUID place) {
        return postings().stream()
                .filter(p ->
                        p.account() == Account.MONEY && place.equals(p.tags().place()))
                .mapToLong(p -> p.amount().minor())
                .sum();
    }
}
