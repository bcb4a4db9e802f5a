package patinary.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** The pages in the shop's other language, and what does not change with it. */
@ShopTest
class SpanishIT {

    private static final List<String> PAGES = List.of(
            "/",
            "/receipts",
            "/receipts/new",
            "/buy",
            "/bench",
            "/bench/now",
            "/pieces",
            "/supplies",
            "/offers",
            "/sales",
            "/stall",
            "/expenses",
            "/moves",
            "/moves/money",
            "/year/2026",
            "/shop",
            "/shop/people",
            "/history",
            "/help",
            "/me",
            "/waiting",
            "/labels/grids/new",
            "/sales-tax",
            "/no/such/page");

    private final MockMvc web;

    @Autowired
    SpanishIT(MockMvc web) {
        this.web = web;
    }

    @Test
    void everyMainPageSpeaksIt() throws Exception {
        String files = body("/year/2026/journal.csv");
        assertThat(body("/shop")).contains("lang=\"en-US\"", "Save settings");
        speakSpanish("ES");

        for (String path : PAGES) {
            assertThat(body(path))
                    .as(path)
                    .contains("lang=\"es-ES\"")
                    .doesNotContainPattern("\\?\\?[a-z]+\\.")
                    .doesNotContain(">Sign out<", ">Receipts<", ">Supplies<", ">Pieces<", ">More<");
        }
        assertThat(body("/sign-in")).contains("lang=\"es-ES\"", "Contraseña");
        assertThat(body("/shop")).contains("Guardar los ajustes", ">1 ene 2025<");
        assertThat(body("/labels/grids/new")).containsPattern("<input(?=[^>]*\"A4\")[^>]*checked");
        assertThat(body("/year/2026/journal.csv")).isEqualTo(files);
    }

    @Test
    void theHandbookSpeaksItAndKeepsItsPlaces() throws Exception {
        speakSpanish("MX");
        assertThat(body("/handbook/cautions")).contains("<h1 id=\"cautions\">Precauciones</h1>");
        assertThat(body("/handbook?q=trapos RAG")).contains("href=\"/handbook/cautions\"");
        assertThat(body("/handbook/archive")).contains("Esta página está en inglés.");
    }

    @Test
    void aLanguageOrCountryThatIsNotOfferedIsRefused() throws Exception {
        assertThat(web.perform(settings("xx", "ES")).andReturn().getResponse().getStatus())
                .isEqualTo(422);
        assertThat(web.perform(settings("es", "ZZ")).andReturn().getResponse().getStatus())
                .isEqualTo(422);
    }

    private void speakSpanish(String country) throws Exception {
        web.perform(settings("es", country)).andExpect(redirectedUrl("/shop"));
    }

    private static MockHttpServletRequestBuilder settings(String language, String country) {
        return post("/shop")
                .with(InventedShop.owner())
                .param("version", "0")
                .param("shopName", "Linden Lane Bench")
                .param("taxTable", "us-schedule-c")
                .param("hourlyRate", "18")
                .param("costingMethod", "FIFO")
                .param("timeZone", "America/New_York")
                .param("language", language)
                .param("country", country);
    }

    private String body(String path) throws Exception {
        return web.perform(get(path).with(InventedShop.owner()))
                .andReturn()
                .getResponse()
                .getContentAsString();
    }
}
