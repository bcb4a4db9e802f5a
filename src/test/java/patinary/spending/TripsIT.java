package patinary.spending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.ledger.Books;
import patinary.testing.ShopTest;

/** Trips over saved ways, vehicles and their odometers, through the pages. Names and miles are invented. */
@ShopTest
class TripsIT {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Books books;

    @Autowired
    private Vehicles vehicles;

    private final UUID van = UUID.randomUUID();
    private final UUID way = UUID.randomUUID();
    private final UUID trip = UUID.randomUUID();

    /** 2 × 5.5 miles at 70 cents (IRS Notice 2025-5) come to 7.70; sent twice, once in the books. */
    @Test
    void oneTapRecordsATripThereAndBack() throws Exception {
        saveTheWay();
        mvc.perform(get("/trips").with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Hollow Barn and back, 11 miles")))
                .andExpect(content().string(not(containsString("??"))));
        for (int i = 0; i < 2; i++) {
            send("/trips", "id", trip, "date", "2025-03-08", "way", way).andExpect(redirectedUrl("/trips/" + trip));
        }
        Trip driven = books.find(Trip.class, trip).orElseThrow();
        assertThat(driven.miles()).isEqualByComparingTo("11");
        assertThat(driven.cost().minor()).isEqualTo(770);
        assertThat(driven.purpose()).isEqualTo("Thrift round");
        send("/ways/" + way + "/remove").andExpect(redirectedUrl("/trips"));
        mvc.perform(get("/trips?q=hollow&year=2025").with(owner()))
                .andExpect(content().string(containsString("Trips: 1. Miles: 11.")));
        mvc.perform(get("/trips?q=elsewhere").with(owner()))
                .andExpect(content().string(containsString("No trip here")));
    }

    @Test
    void aWayWithoutARateOfTheDayIsNotGuessed() throws Exception {
        saveTheWay();
        send("/trips", "id", trip, "date", "2031-03-08", "way", way)
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("No rate is known for that day")))
                .andExpect(content().string(containsString("2031-03-08")));
        assertThat(books.find(Trip.class, trip)).isEmpty();
    }

    @Test
    void theOdometerAnswersForTheOnlyVehicleAndSaysWhereItCannotBe() throws Exception {
        saveTheVan();
        saveTheWay();
        send("/trips", "id", trip, "date", "2025-03-08", "way", way, "oneWay", true);
        send("/vehicles/" + van + "/2025", "version", -1, "start", "100", "end", "160.5", "commuting", "12")
                .andExpect(redirectedUrl("/vehicles?year=2025"));
        VehicleYear year = vehicles.year(2025).get(0);
        assertThat(year.business()).isEqualByComparingTo("5.5");
        assertThat(year.other()).isEqualByComparingTo("43");
        mvc.perform(get("/year/2025").with(owner()))
                .andExpect(content().string(not(containsString("miles more than"))));
        mvc.perform(get("/vehicles/" + van + "/2026").with(owner()))
                .andExpect(content().string(containsString("160.5")));
        send("/vehicles/" + van + "/2025", "version", 0, "start", "100", "end", "103")
                .andExpect(redirectedUrl("/vehicles?year=2025"));
        mvc.perform(get("/year/2025").with(owner())).andExpect(content().string(containsString("2.5 miles more than")));
        send("/vehicles/" + van + "/2025", "version", 0, "start", "100", "end", "104")
                .andExpect(status().isConflict());
    }

    @ParameterizedTest
    @CsvSource({"x, 5, miles of zero", "5, 4, does not run back", "1.25, 9, one decimal", "-3, 9, miles of zero"})
    void anOdometerThatCannotBeStaysAsTyped(String start, String end, String said) throws Exception {
        saveTheVan();
        send("/vehicles/" + van + "/2025", "version", -1, "start", start, "end", end)
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString(said)))
                .andExpect(content().string(containsString("value=\"" + start + "\"")));
        assertThat(vehicles.reading(van, 2025)).isEmpty();
    }

    @Test
    void aVehicleThatATripNamesStays() throws Exception {
        saveTheVan();
        send("/vehicles/new", "id", UUID.randomUUID(), "name", "green VAN")
                .andExpect(status().isUnprocessableContent());
        send(
                "/trips/new",
                "id",
                trip,
                "date",
                "2025-03-08",
                "startPlace",
                "Home",
                "destination",
                "Hall",
                "purpose",
                "Lamps",
                "miles",
                "4",
                "vehicle",
                van);
        send("/vehicles/" + van + "/remove").andExpect(redirectedUrl("/vehicles/" + van));
        send("/trips/" + trip + "/remove").andExpect(redirectedUrl("/trips"));
        send("/vehicles/" + van + "/remove").andExpect(redirectedUrl("/vehicles"));
        assertThat(vehicles.all()).isEmpty();
    }

    private void saveTheVan() throws Exception {
        send("/vehicles/new", "id", van, "name", "Green van", "inService", "2024-11-03")
                .andExpect(redirectedUrl("/vehicles"));
    }

    private void saveTheWay() throws Exception {
        send(
                        "/ways/new",
                        "id",
                        way,
                        "startPlace",
                        "Workroom",
                        "destination",
                        "Hollow Barn",
                        "purpose",
                        "Thrift round",
                        "miles",
                        "5.5")
                .andExpect(redirectedUrl("/trips"));
    }

    private ResultActions send(String path, Object... fields) throws Exception {
        MockHttpServletRequestBuilder request = post(path).with(owner());
        for (int i = 0; i < fields.length; i += 2) {
            request.param(fields[i].toString(), fields[i + 1].toString());
        }
        return mvc.perform(request);
    }
}
