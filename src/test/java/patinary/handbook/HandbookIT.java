package patinary.handbook;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import patinary.testing.ShopTest;

/** The guide and the handbook as pages of the program. */
@ShopTest
class HandbookIT {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Library library;

    @Test
    void everyPageOpens() throws Exception {
        for (Leaf leaf : library.leaves()) {
            mvc.perform(get(leaf.address()).with(owner()))
                    .andExpect(status().isOk())
                    .andExpect(content().string(containsString("<h1 id=\"")))
                    .andExpect(content().string(not(containsString("??"))));
        }
    }

    @Test
    void theListCanBeSearched() throws Exception {
        mvc.perform(get("/handbook").with(owner()))
                .andExpect(content().string(containsString("href=\"/handbook/costing\"")))
                .andExpect(content().string(not(containsString("id=\"found\""))));
        mvc.perform(get("/handbook?q=largest remainder").with(owner()))
                .andExpect(content().string(containsString("href=\"/handbook/sharing")));
        mvc.perform(get("/guide?q=<b>nothing like it</b>").with(owner()))
                .andExpect(content().string(containsString("Nothing found")))
                .andExpect(content().string(not(containsString("<b>nothing"))));
    }

    @Test
    void aPageKeepsWhatItsWordsMean() throws Exception {
        mvc.perform(get("/handbook/what-moves").with(owner()))
                .andExpect(content().string(containsString("<tr id=\"sell-through\">")))
                .andExpect(content().string(containsString("href=\"/handbook/days-to-sell\"")));
        mvc.perform(get("/guide/example-sales.csv").with(owner())).andExpect(status().isOk());
        mvc.perform(get("/handbook/no-such-page").with(owner())).andExpect(status().isNotFound());
        mvc.perform(get("/guide/no-such-file.csv").with(owner())).andExpect(status().isNotFound());
        mvc.perform(get("/handbook/what-moves")).andExpect(status().is3xxRedirection());
    }
}
