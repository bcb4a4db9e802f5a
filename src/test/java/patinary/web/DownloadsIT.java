package patinary.web;

import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** What reads a whole shop or a whole year is written for one device after the other. */
@ShopTest
class DownloadsIT {

    private static final List<String> LARGE =
            List.of("/shop/archive/download", "/shop/backups/download", "/year/2025.zip", "/year/2025.xlsx");

    @Autowired
    private Downloads downloads;

    @Autowired
    private MockMvc mvc;

    @Test
    void areWrittenOneAfterTheOther() throws Exception {
        downloads.alone(() -> LARGE.forEach(this::assertRefused));

        for (String path : LARGE) {
            mvc.perform(get(path).with(InventedShop.owner()))
                    .andExpect(status().isOk())
                    .andExpect(header().string("Content-Disposition", containsString("attachment")));
        }
    }

    private void assertRefused(String path) {
        try {
            mvc.perform(get(path).with(InventedShop.owner()))
                    .andExpect(status().isServiceUnavailable())
                    .andExpect(header().string("Retry-After", "10"))
                    .andExpect(header().doesNotExist("Content-Disposition"))
                    .andExpect(content().string(containsString("Another file is on its way")));
        } catch (Exception failed) {
            throw new AssertionError(path, failed);
        }
    }
}
