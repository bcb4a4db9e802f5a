package patinary.bringing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.selling.ManySales;

class SettleLinkTest {

    private static final UUID CHANNEL = UUID.fromString("00000000-0000-4000-8000-00000000000d");

    /** What a file says reaches the form of a sale as it was; a supply from the shelf is added there by hand. */
    @Test
    void carriesTheOrderToTheFormOfASale() {
        ManySales.Typed order = new ManySales.Typed(
                new UUID(1, 1),
                LocalDate.of(2025, 3, 11),
                CHANNEL,
                "Lou & Kit +1",
                "MK 7",
                "",
                "0.00",
                "6.00",
                "3.20",
                "4.90",
                true,
                List.of(
                        new ManySales.Line("Tray", "P0001", "", "", "", "40.00", "0.00"),
                        new ManySales.Line("Jug", "P0002", "", "", "", "12.00", "0.00"),
                        new ManySales.Line("Brush", "", "some supply", "1", "2", "5.00", "0.00")));

        SettleLink link = SettleLink.of(order);

        assertThat(link.order()).isEqualTo("MK 7");
        assertThat(link.address())
                .isEqualTo("/sales/new?date=2025-03-11&channel=" + CHANNEL
                        + "&buyer=Lou%20%26%20Kit%20%2B1&order=MK%207&discount=0.00&shipping=6.00&tax=3.20&fee=4.90"
                        + "&piece=P0001&piece=P0002&price=40.00&price=12.00");
    }
}
