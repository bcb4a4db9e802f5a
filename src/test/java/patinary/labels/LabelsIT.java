package patinary.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.io.IOException;
import java.util.List;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.testing.Trestle;

/** From the chosen pieces to the file that is printed and scanned again. */
@ShopTest
class LabelsIT {

    private static final String OWN = "/labels/grids/7f3e0d52-5a3f-4a53-9a53-2b1c6f6f0d10";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private ApplicationContext program;

    @BeforeEach
    void stock() {
        Trestle trestle = new Trestle(program);
        trestle.offered("Tin tray", "Shelf A", 4500);
        trestle.piece("Enamel jug", "Blue crate");
    }

    @Test
    void piecesAreFoundByWordStatePlaceAndDay() throws Exception {
        page("/labels").andExpect(content().string(containsString("Tin tray"))).andExpect(noGap());
        page("/labels?q=JUG").andExpect(content().string(not(containsString("Tin tray"))));
        page("/labels?state=OFFERED").andExpect(content().string(not(containsString("Enamel jug"))));
        page("/labels?place=Blue crate").andExpect(content().string(not(containsString("Tin tray"))));
        page("/labels?since=2025-03-01").andExpect(content().string(containsString("Tin tray")));
        page("/labels?since=2025-03-02").andExpect(content().string(containsString("No piece is like that")));
        page("/labels?since=soon&state=NONSENSE").andExpect(content().string(containsString("Tin tray")));
        page("/labels/sheet?piece=P0001&piece=P0002")
                .andExpect(content().string(containsString("P0001\nP0002")))
                .andExpect(noGap());
    }

    @Test
    void aSheetIsPrintedFromTheFirstFreeLabelAndScannedAgain() throws Exception {
        LabelGrid grid = LabelGridTest.grid("a4-3x8");
        byte[] file = page("/labels/sheet.pdf?codes=p1 x2, 2&grid=a4-3x8&first=23&price=true")
                .andExpect(status().isOk())
                .andExpect(content().contentType("application/pdf"))
                .andReturn()
                .getResponse()
                .getContentAsByteArray();

        assertThat(PrintedPage.pages(file)).isEqualTo(2);
        assertThat(scanned(file, 0, grid, 22)).isEqualTo("http://localhost/p/P0001");
        assertThat(scanned(file, 0, grid, 23)).isEqualTo("http://localhost/p/P0001");
        assertThat(scanned(file, 1, grid, 0)).isEqualTo("http://localhost/p/P0002");
        assertThat(words(file)).contains("P0001", "Tin tray", "$45.00", "Enamel jug");
    }

    @Test
    void theAddressOnLabelsIsHers() throws Exception {
        for (String wrong :
                List.of("shop", "javascript:alert(1)", "https://", "https://shop.example/?a=b", "ftp://a.b")) {
            send(post("/labels/grids/address").param("address", wrong))
                    .andExpect(status().isUnprocessableContent())
                    .andExpect(content().string(containsString("Enter an address that begins")));
        }
        send(post("/labels/grids/address").param("address", " https://shop.example/ "))
                .andExpect(redirectedUrl("/labels/grids"));
        page("/labels/grids").andExpect(content().string(containsString("value=\"https://shop.example\"")));
        assertThat(label()).isEqualTo("https://shop.example/p/P0001");
        send(post("/labels/grids/address").param("address", ""));
        assertThat(label()).isEqualTo("P0001");
    }

    private String label() throws Exception {
        byte[] file = page("/labels/sheet.pdf?codes=P0001&grid=roll-50x25")
                .andReturn()
                .getResponse()
                .getContentAsByteArray();
        return scanned(file, 0, LabelGridTest.grid("roll-50x25"), 0);
    }

    @Test
    void whatCannotBePrintedIsSaidBesideItsField() throws Exception {
        refused("codes=P0099&grid=a4-3x8", "No piece has the code P0099");
        refused("codes=&grid=a4-3x8", "Enter at least one code");
        refused("codes=P0001 x501&grid=a4-3x8", "At most 500 labels");
        refused("codes=P0001&grid=none", "Choose a sheet or a roll");
        refused("codes=P0001&grid=a4-3x8&first=25", "Choose a label of the sheet");
        refused("codes=P0001&grid=a4-3x8&first=x", "Choose a label of the sheet");
    }

    private void refused(String query, String why) throws Exception {
        page("/labels/sheet.pdf?" + query)
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().contentTypeCompatibleWith("text/html"))
                .andExpect(content().string(containsString(why)))
                .andExpect(noGap());
    }

    /** 2.5 in are 63.5 mm exactly (international inch). */
    @Test
    void aSheetOfHerOwnIsKeptChangedPrintedAndRemoved() throws Exception {
        page("/labels/grids/new").andExpect(status().isOk()).andExpect(noGap());
        send(own("Tags", "2.5 in", "1").param("rows", "0"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Enter a number of one or more")))
                .andExpect(content().string(containsString("value=\"2.5 in\"")));
        send(own("Tags", "2.5 in", "40").param("rows", "5")).andExpect(redirectedUrl("/labels/grids"));
        page("/labels/grids")
                .andExpect(content().string(containsString("Tags")))
                .andExpect(noGap());
        page(OWN).andExpect(content().string(containsString("value=\"63.5\"")));
        send(own("Tags", "70", "40").param("rows", "5")).andExpect(redirectedUrl("/labels/grids"));
        page(OWN).andExpect(content().string(containsString("value=\"70\"")));
        page("/labels/sheet?codes=P0001&grid=" + OWN.substring(14))
                .andExpect(content().string(containsString("Tags")));
        page(OWN + "/test.pdf").andExpect(content().contentType("application/pdf"));
        page("/labels/grids/letter-3x10/test.pdf").andExpect(content().contentType("application/pdf"));
        send(post("/labels/grids/" + UUID.randomUUID())
                        .param("name", "TAGS")
                        .param("paper", "ROLL")
                        .param("width", "50")
                        .param("height", "30"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("You have a sheet of this name already")));
        send(post(OWN + "/remove")).andExpect(redirectedUrl("/labels/grids"));
        page(OWN).andExpect(status().isNotFound());
        page(OWN + "/test.pdf").andExpect(status().isNotFound());
        send(post(OWN + "/remove")).andExpect(status().isNotFound());
    }

    private static MockHttpServletRequestBuilder own(String name, String width, String height) {
        return post(OWN)
                .param("name", name)
                .param("paper", "A4")
                .param("columns", "2")
                .param("width", width)
                .param("height", height)
                .param("left", "10")
                .param("top", "10")
                .param("across", "2")
                .param("down", "0");
    }

    @Test
    void measuresThatNoPageHoldsAreRefused() throws Exception {
        wide("200", "40", "The labels are wider than the page");
        wide("90", "300", "The labels are higher than the page");
        wide("0", "40", "A label must be more than nothing");
        wide("ninety", "40", "Begin with a number in figures");
        wide("-5", "40", "Enter a length like 25.4, or 1 in");
    }

    private void wide(String width, String height, String why) throws Exception {
        send(own("Tags", width, height).param("rows", "2"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString(why)))
                .andExpect(noGap());
    }

    private static String scanned(byte[] file, int page, LabelGrid grid, int cell) throws IOException {
        return PrintedPage.of(file, page)
                .read(grid.cells().get(cell))
                .orElseThrow()
                .getText();
    }

    private static String words(byte[] file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            return new PDFTextStripper().getText(document);
        }
    }

    /** A message that is not there is shown as its key between question marks. */
    private static org.springframework.test.web.servlet.ResultMatcher noGap() {
        return content().string(not(containsString("??")));
    }

    private ResultActions page(String address) throws Exception {
        return mvc.perform(get(address).with(InventedShop.owner()));
    }

    private ResultActions send(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request.with(InventedShop.owner()));
    }
}
