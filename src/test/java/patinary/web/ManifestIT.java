package patinary.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import patinary.testing.ShopTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a phone reads before it puts the shop on its home screen; the field names are the W3C's. */
@ShopTest
class ManifestIT {

    private static final int MOST_BYTES = 60_000;

    @Autowired
    private MockMvc mvc;

    @Test
    void saysWhatAPhoneNeedsAndNothingOfTheShop() throws Exception {
        MockHttpServletResponse answer = ask("/manifest.webmanifest");
        JsonNode manifest = JsonMapper.shared().readTree(answer.getContentAsString());

        assertThat(answer.getContentType()).isEqualTo("application/manifest+json");
        assertThat(answer.getHeader("Cache-Control")).doesNotContain("no-store");
        assertThat(manifest.path("name").asString()).isEqualTo("Patinary");
        assertThat(manifest.path("start_url").asString()).isEqualTo("/buy");
        assertThat(manifest.path("scope").asString()).isEqualTo("/");
        assertThat(manifest.path("display").asString()).isEqualTo("standalone");
        for (String color : List.of("background_color", "theme_color")) {
            assertThat(manifest.path(color).asString()).matches("#[0-9a-f]{6}");
        }
    }

    @Test
    void itsPicturesAreAsLargeAsItSaysAndKeptForAYear() throws Exception {
        JsonNode manifest =
                JsonMapper.shared().readTree(ask("/manifest.webmanifest").getContentAsString());
        List<String> kinds = new ArrayList<>();
        int bytes = 0;
        for (JsonNode icon : manifest.path("icons")) {
            kinds.add(icon.path("sizes").asString() + " " + icon.path("purpose").asString());
            assertThat(icon.path("src").asString())
                    .as("carries a hash of its content")
                    .matches(".*-[0-9a-f]{32}\\.png");
            bytes += assertPicture(
                    icon.path("src").asString(), icon.path("sizes").asString());
        }
        bytes += assertPicture("/img/icon-180.png", "180x180");

        assertThat(kinds).containsExactlyInAnyOrder("192x192 any", "512x512 any", "512x512 maskable");
        assertThat(bytes).isLessThan(MOST_BYTES);
    }

    @Test
    void everyPageLeadsToIt() throws Exception {
        assertThat(ask("/sign-in").getContentAsString())
                .contains("rel=\"manifest\" href=\"/manifest.webmanifest\"")
                .containsPattern("rel=\"apple-touch-icon\" href=\"/img/icon-180-[0-9a-f]{32}\\.png\"");
    }

    private int assertPicture(String path, String sizes) throws Exception {
        MockHttpServletResponse answer = ask(path);
        BufferedImage picture = ImageIO.read(new ByteArrayInputStream(answer.getContentAsByteArray()));
        assertThat(answer.getContentType()).isEqualTo("image/png");
        assertThat(answer.getHeader("Cache-Control")).contains("max-age=31536000");
        assertThat(picture.getWidth() + "x" + picture.getHeight()).isEqualTo(sizes);
        return answer.getContentAsByteArray().length;
    }

    private MockHttpServletResponse ask(String path) throws Exception {
        return mvc.perform(get(path)).andReturn().getResponse();
    }
}
