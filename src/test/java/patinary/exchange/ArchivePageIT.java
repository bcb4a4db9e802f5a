package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.forwardedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.RequestBuilder;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

@ShopTest
class ArchivePageIT {

    @Autowired
    private MockMvc web;

    @Test
    void savesTheShopAndTakesItInAgain() throws Exception {
        byte[] zip = web.perform(get("/shop/archive/download").with(InventedShop.owner()))
                .andExpect(status().isOk())
                .andExpect(header().string("Content-Disposition", containsString("attachment")))
                .andReturn()
                .getResponse()
                .getContentAsByteArray();

        web.perform(sending(zip)).andExpect(status().isSeeOther()).andExpect(redirectedUrl("/shop/archive"));
    }

    @Test
    void tellsOnThePageWhatIsWrong() throws Exception {
        byte[] zip = zip("style.csv", "id,name\r\nx,<b>Pond</b>\r\n");

        web.perform(sending(zip))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("an archive without it is no shop")));
        byte[] wrong = zip(
                "shop.csv",
                "name,currency,minor_digits,costing_method,hourly_rate,tax_table,first_day,time_zone\r\n"
                        + "Invented,USD,2,FIFO,20,<b>,2025-01-01,UTC\r\n");
        web.perform(sending(wrong))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("line 2")))
                .andExpect(content().string(containsString("column hourly_rate")))
                .andExpect(content().string(containsString("An amount is written like 12.50")))
                .andExpect(content().string(containsString("<q>&lt;b&gt;</q>")));
        web.perform(sending("no zip".getBytes()))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("This is no zip file")));
    }

    @Test
    void isForTheOwnerOnly() throws Exception {
        var helper = SecurityMockMvcRequestPostProcessors.user("Sam").roles("HELPER");

        web.perform(get("/shop/archive/download").with(helper)).andExpect(forwardedUrl("/refused"));
        assertThat(web.perform(get("/shop/archive").with(InventedShop.owner()))
                        .andExpect(status().isOk())
                        .andReturn()
                        .getResponse()
                        .getContentAsString())
                .contains("/shop/archive/download", "Up to 2 GB", "/shop/backups/restore");
    }

    /** The form as a browser writes it, its token first; the token of the tests takes the place of hers. */
    private static RequestBuilder sending(byte[] file) throws IOException {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.write(("--xx\r\nContent-Disposition: form-data; name=\"archive\"; filename=\"shop.zip\"\r\n"
                        + "Content-Type: application/zip\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8));
        body.write(file);
        body.write("\r\n--xx--\r\n".getBytes(StandardCharsets.UTF_8));
        return post("/shop/archive")
                .contentType("multipart/form-data; boundary=xx")
                .content(body.toByteArray())
                .with(InventedShop.owner())
                .with(csrf().asHeader());
    }

    private static byte[] zip(String name, String text) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry(name));
            zip.write(text.getBytes(StandardCharsets.UTF_8));
            zip.closeEntry();
        }
        return bytes.toByteArray();
    }
}
