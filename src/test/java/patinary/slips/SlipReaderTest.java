package patinary.slips;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Invented slips, as words. */
class SlipReaderTest {

    @Test
    void readsLinesDiscountsTaxAndTotal() {
        Slip slip = read(
                "Tin Lantern Barn",
                "Date: 2026-03-28",
                "Oak table 12.00",
                "Markdown -0.50",
                "3 x Jug $4.50",
                "Basket 2 @ 2,10 4,20",
                "Blue vase",
                "2 x 1.25 2.50",
                "Subtotal 22.70",
                "Discount -2.00",
                "Sales tax 7% 1:45",
                "TOTAL $22.15",
                "Cash 30.00",
                "Change 7.85");
        assertThat(slip.shop()).isEqualTo("Tin Lantern Barn");
        assertThat(slip.dates()).containsExactly(LocalDate.of(2026, 3, 28));
        assertThat(slip.items())
                .containsExactly(
                        new Slip.Item("Oak table", 1, 1200, 1200, 50, 90),
                        new Slip.Item("Jug", 3, 150, 450, 0, 90),
                        new Slip.Item("Basket", 2, 210, 420, 0, 90),
                        new Slip.Item("Blue vase", 2, 125, 250, 0, 90));
        assertThat(slip.total()).isEqualTo(2215);
        assertThat(slip.tax()).isEqualTo(145);
        assertThat(slip.discount()).isEqualTo(200);
        assertThat(slip.addsUp()).isTrue();
    }

    @Test
    void aMisreadLineDoesNotAddUp() {
        assertThat(read("Shop", "Oak table 13.00", "TOTAL 12.00").addsUp()).isFalse();
    }

    @Test
    void anAmbiguousDateIsGivenBothWays() {
        assertThat(WrittenDate.in("03/04/2026")).containsExactly(LocalDate.of(2026, 3, 4), LocalDate.of(2026, 4, 3));
        assertThat(WrittenDate.in("28/03/26")).containsExactly(LocalDate.of(2026, 3, 28));
        assertThat(WrittenDate.in("03.04.2026")).containsExactly(LocalDate.of(2026, 4, 3));
        assertThat(WrittenDate.in("Mar 4, 2026")).containsExactly(LocalDate.of(2026, 3, 4));
        assertThat(WrittenDate.in("99/99/2026")).isEmpty();
    }

    @Test
    void garbledRowsOfTheTableAreLeftOut() {
        String good = "5\t1\t1\t1\t1\t1\t10\t20\t30\t12\t91.5\tOak";
        List<SlipLine> lines =
                WordTable.read("level\tpage\n" + good + "\n5\t1\t1\t1\t1\t2\tx\t20\t30\t12\t91\tbad\n5\t1");
        assertThat(lines).hasSize(1);
        assertThat(lines.get(0).text()).isEqualTo("Oak");
    }

    private static Slip read(String... lines) {
        return SlipReader.read(Arrays.stream(lines)
                .map(line -> new SlipLine(Arrays.stream(line.split(" "))
                        .map(word -> new SlipWord(0, 0, 10, 10, 90, word))
                        .toList()))
                .toList());
    }
}
