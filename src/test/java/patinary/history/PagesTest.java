package patinary.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.ledger.Trail;

class PagesTest {

    private static final UUID ID = UUID.fromString("0b4f4c2e-1111-4222-8333-944445555666");

    @Test
    void aPageOfOneThingIsKnownByItsAddress() {
        assertThat(Pages.at("/sales/" + ID)).contains(new Subject("sale", ID));
        assertThat(Pages.at("/supplies/counts/" + ID)).contains(new Subject("supply_count", ID));
        assertThat(Pages.at("/supplies/" + ID)).contains(new Subject("supply", ID));
    }

    @Test
    void otherPagesShowNothing() {
        assertThat(Pages.at("/sales")).isEmpty();
        assertThat(Pages.at("/sales/" + ID + "/edit")).isEmpty();
        assertThat(Pages.at("/elsewhere/" + ID)).isEmpty();
        assertThat(Pages.at("/sales/new")).isEmpty();
    }

    @Test
    void thePageOfTheSettingsShowsTheSettings() {
        Subject settings = new Subject(Trail.SETTINGS, Trail.THE_SHOP);

        assertThat(Pages.at("/shop")).contains(settings);
        assertThat(Pages.of(settings)).contains("/shop");
        assertThat(Pages.at("/shop/people")).isEmpty();
    }

    @Test
    void thereAndBack() {
        Subject trip = new Subject("trip", ID);

        assertThat(Pages.of(trip).flatMap(Pages::at)).contains(trip);
        assertThat(Pages.of(new Subject("payment", ID))).isEmpty();
    }
}
