package patinary.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import patinary.ledger.Books;
import patinary.testing.ShopTest;
import patinary.web.Page;
import patinary.web.Window;

/** The list of pieces, a window at a time. */
@ShopTest
class PieceListIT {

    private static final LocalDate DAY = LocalDate.of(2025, 3, 1);
    private static final int SIZE = 3;

    @Autowired
    private Books books;

    @Autowired
    private NewPieces newPieces;

    @Autowired
    private PieceList list;

    @Test
    void theWindowsTogetherAreTheWholeListLatestFirst() {
        // Two, four and one of three days, so that a window ends within a day; the last was never found.
        int[] days = {0, 0, 1, 1, 1, 1, 2};
        for (int each = 0; each < days.length; each++) {
            books.record(FoundBoxes.bought(
                    DAY.plusDays(days[each]), 500, null, newPieces.create("Box " + each, null, null)));
        }
        newPieces.create("Never found", null, null);

        List<String> seen = new ArrayList<>();
        for (int window = 1; window <= 3; window++) {
            Page<PieceList.Row> page = list.find(query("NEWEST"), new Window(window, SIZE));
            assertThat(page.total()).isEqualTo(8);
            page.rows().forEach(row -> seen.add(row.code()));
        }
        assertThat(seen).containsExactly("P0007", "P0006", "P0005", "P0004", "P0003", "P0002", "P0001", "P0008");
        assertThat(list.find(query("NEWEST"), new Window(4, SIZE)).rows()).isEmpty();
        assertThat(list.find(query("CODE"), new Window(1, SIZE)).rows())
                .extracting(PieceList.Row::code)
                .containsExactly("P0001", "P0002", "P0003");
    }

    private static PieceQuery query(String sort) {
        return new PieceQuery("", "", "", "", "", "", sort);
    }
}
