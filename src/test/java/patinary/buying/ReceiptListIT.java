package patinary.buying;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import patinary.ledger.Books;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.testing.ShopTest;
import patinary.web.Window;

/** The list of receipts, a window at a time and narrowed. */
@ShopTest
class ReceiptListIT {

    private static final LocalDate DAY = LocalDate.of(2025, 3, 1);
    private static final int SIZE = 3;

    @Autowired
    private Books books;

    @Autowired
    private ReceiptList list;

    /** Two, four and one of three days, so that a window ends within a day. */
    @BeforeEach
    void buy() {
        int[] days = {0, 0, 1, 1, 1, 1, 2};
        for (int each = 0; each < days.length; each++) {
            buy(DAY.plusDays(days[each]), "Box " + each, 100 + each);
        }
    }

    @Test
    void theWindowsTogetherAreTheWholeListLatestFirst() {
        List<String> seen = new ArrayList<>();
        for (int window = 1; window <= 3; window++) {
            ReceiptList.Found found = list.find(query(""), new Window(window, SIZE));
            assertThat(found.rows().total()).isEqualTo(7);
            assertThat(found.total()).isEqualTo(721);
            found.rows().rows().forEach(row -> seen.add(row.what()));
        }
        assertThat(seen).containsExactly("Box 6", "Box 5", "Box 4", "Box 3", "Box 2", "Box 1", "Box 0");
        assertThat(list.find(query(""), new Window(4, SIZE)).rows().rows()).isEmpty();
    }

    @Test
    void aNarrowedListIsNotCutToTheDaysOfTheWholeOne() {
        ReceiptList.Found found = list.find(query("box 0"), new Window(1, SIZE));
        assertThat(found.total()).isEqualTo(100);
        assertThat(found.rows().rows()).extracting(ReceiptList.Row::what).containsExactly("Box 0");
    }

    @Test
    void whatStandsForAnythingInAPatternStandsForItself() {
        buy(DAY, "Half price, 50% off_the_shelf!", 900);
        assertThat(list.find(query("50% off_"), new Window(1, SIZE)).rows().total())
                .isOne();
        assertThat(list.find(query("shelf!"), new Window(1, SIZE)).rows().total())
                .isOne();
        assertThat(list.find(query("b%x"), new Window(1, SIZE)).rows().total()).isZero();
    }

    @Test
    void whatTheTotalsComeToFollowsTheNextReceipt() {
        assertThat(list.find(query("box"), new Window(1, SIZE)).total()).isEqualTo(721);
        buy(DAY, "Box of buttons", 9);
        assertThat(list.find(query("box"), new Window(1, SIZE)).total()).isEqualTo(730);
    }

    private static ReceiptList.Query query(String words) {
        return new ReceiptList.Query(words, "", "", "");
    }

    private void buy(LocalDate day, String what, long minor) {
        Amount price = Amount.of(minor);
        ReceiptLine line =
                new ReceiptLine(1, LineKind.HOME, what, BigDecimal.ONE, price, null, null, false, null, null, null);
        books.record(new Receipt(
                UUID.randomUUID(),
                new ReceiptContent(
                        day,
                        "",
                        null,
                        null,
                        price,
                        List.of(line),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(new Tender(1, Way.OWNER, null, price)))));
    }
}
