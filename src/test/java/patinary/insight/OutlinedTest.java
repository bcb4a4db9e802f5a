package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class OutlinedTest {

    private record Shelf(String name, List<Box> boxes) {}

    private record Box(String what, BigDecimal weight) {}

    @Test
    void tellsWhatDiffersAndNotInWhichOrderItCame() {
        Shelf shelf = new Shelf("A", List.of(box("tin", "1.50"), box("jar", "2")));
        assertThat(told(new Shelf("A", List.of(box("jar", "2.0"), box("tin", "1.5")))))
                .isEqualTo(told(shelf));
        assertThat(told(new Shelf("A", List.of(box("jar", "2"), box("tin", "1.51")))))
                .isNotEqualTo(told(shelf));
        assertThat(told(new Shelf("B", shelf.boxes()))).isNotEqualTo(told(shelf));
        assertThat(told(new Shelf("A", List.of(box("jar", "2"))))).isNotEqualTo(told(shelf));
        assertThat(Outlined.of(new Shelf("B", shelf.boxes()), "name")).isEqualTo(Outlined.of(shelf, "name"));
    }

    private static List<String> told(Shelf shelf) {
        return Outlined.of(shelf, "");
    }

    private static Box box(String what, String weight) {
        return new Box(what, new BigDecimal(weight));
    }
}
