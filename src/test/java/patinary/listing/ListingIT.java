package patinary.listing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import patinary.testing.ShopTest;
import patinary.testing.Trestle;

/** The text of an offer from a pattern to a file. Things, patterns and words are invented. */
@ShopTest
class ListingIT {

    private static final String BODY = "{title}\nMade of: {material}\nSize: {size}\n- {care}";

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Patterns patterns;

    private final UUID pattern = UUID.randomUUID();
    private UUID tray;
    private UUID offer;

    @BeforeEach
    void offered() {
        tray = new Trestle(program).offered("Painted tray", "Box 1", 4500);
        jdbc.sql("insert into piece_size (piece_id, size) values (?, '12 x 9 x 1 in')")
                .param(tray)
                .update();
        offer = jdbc.sql("select offer_id from offer_piece where piece_id = ?")
                .param(tray)
                .query(UUID.class)
                .single();
    }

    @Test
    void aPatternMakesTheTextAndWhatSheEditsIsKept() throws Exception {
        page("/listing/" + offer).andExpect(content().string(containsString("There is no pattern yet")));
        pattern("{title}", BODY).andExpect(status().is3xxRedirection());
        page("/listing/" + offer)
                .andExpect(content().string(containsString("Size: 12 x 9 x 1 in")))
                .andExpect(content().string(containsString("- Not dishwasher, microwave or oven safe.")))
                .andExpect(content().string(not(containsString("Made of"))))
                .andExpect(content().string(containsString("made by the pattern")))
                .andExpect(content().string(not(containsString("??"))));

        text("save", 0, "A tray", "My own words").andExpect(status().is3xxRedirection());
        page("/listing/" + offer)
                .andExpect(content().string(containsString("as you edited it")))
                .andExpect(content().string(containsString("only in yours")))
                .andExpect(content().string(containsString("My own words")));
        mvc.perform(get("/listing/" + offer + "/text.txt")
                        .param("pattern", pattern.toString())
                        .with(owner()))
                .andExpect(header().string("Content-Disposition", containsString("offer-P0001.txt")))
                .andExpect(content().string("A tray\n\nMy own words\n"));
        text("save", 7, "Another", "Somebody was quicker").andExpect(status().isConflict());
        text("save", 0, "", "")
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Write a title")));

        text("anew", 0, "", "").andExpect(status().is3xxRedirection());
        page("/listing/" + offer).andExpect(content().string(containsString("made by the pattern")));
        mvc.perform(post("/listing/patterns/" + pattern + "/remove").with(owner()))
                .andExpect(status().is3xxRedirection());
        assertThat(patterns.all()).isEmpty();
    }

    @Test
    void anUnknownBlankIsToldAndWhatWasTypedStays() throws Exception {
        pattern("{titel}", BODY + "\n{colour}")
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Nobody knows this blank: {titel}")))
                .andExpect(content().string(containsString("Nobody knows this blank: {colour}")))
                .andExpect(content().string(containsString("value=\"{titel}\"")));
        assertThat(patterns.all()).isEmpty();
    }

    @Test
    void careIsSaidInHerWordsAndForHerSupplies() throws Exception {
        pattern("{title}", BODY);
        UUID line = UUID.randomUUID();
        UUID wax = UUID.randomUUID();
        jdbc.sql("insert into supply_line (id, name, maker, version) values (?, 'Hill waxes', 'invented', 0)")
                .param(line)
                .update();
        jdbc.sql("insert into supply (id, supply_line_id, name, dimension, version) values (?, ?, 'Clear', 'MASS', 0)")
                .params(wax, line)
                .update();
        page("/listing/care").andExpect(content().string(not(containsString("??"))));
        say("/listing/care/own", "of", line.toString(), "words", "Ask for a little of the same wax.");
        say(
                "/listing/care",
                "lines[0].id",
                "CARE-6",
                "lines[0].words",
                "Wash it by hand.",
                "lines[1].id",
                "CARE-2",
                "lines[1].leftOut",
                "true");
        page("/listing/" + offer)
                .andExpect(content().string(containsString("- Wash it by hand.")))
                .andExpect(content().string(not(containsString("Keep indoors"))))
                .andExpect(content().string(not(containsString("a little of the same wax"))));

        used(wax);
        page("/listing/" + offer)
                .andExpect(content().string(containsString("- Ask for a little of the same wax.")))
                .andExpect(content().string(containsString("Renew the wax")));
        mvc.perform(post("/listing/care/own")
                        .with(owner())
                        .param("of", UUID.randomUUID().toString()))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Write what is to be said")));
    }

    @Test
    void itsPhotosComeInOneFileInTheirOrderAndWithNothingButThePicture() throws Exception {
        mvc.perform(get("/listing/" + offer + "/photos.zip").with(owner())).andExpect(status().isNotFound());
        for (int shade : List.of(0xff0000, 0x00ff00)) {
            mvc.perform(multipart("/photos")
                            .file(new MockMultipartFile("file", "a.jpg", "image/jpeg", picture(shade)))
                            .param("id", UUID.randomUUID().toString())
                            .param("of", tray.toString())
                            .param("stage", "AFTER")
                            .with(owner()))
                    .andExpect(status().is3xxRedirection());
        }
        byte[] zip = mvc.perform(get("/listing/" + offer + "/photos.zip").with(owner()))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsByteArray();
        List<String> names = new ArrayList<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                names.add(entry.getName());
                assertThat(new String(in.readAllBytes(), java.nio.charset.StandardCharsets.ISO_8859_1))
                        .startsWith("\u00ff\u00d8")
                        .doesNotContain("Exif");
            }
        }
        assertThat(names).containsExactly("P0001-1.jpg", "P0001-2.jpg");
    }

    private void used(UUID supply) {
        UUID entry = UUID.randomUUID();
        jdbc.sql(
                        "insert into document (id, kind, kind_rank, doc_date, note, recorded_at, version)"
                                + " values (?, 'BENCH_ENTRY', 4, date '2025-03-02', '', timestamp with time zone '2025-03-02 10:00:00+00', 0)")
                .param(entry)
                .update();
        jdbc.sql("insert into bench_entry (id, minutes, done) values (?, 10, '')")
                .param(entry)
                .update();
        jdbc.sql("insert into bench_piece (bench_entry_id, piece_id, ready) values (?, ?, false)")
                .params(entry, tray)
                .update();
        jdbc.sql("insert into bench_use (bench_entry_id, line, supply_id, typed, quantity, estimated)"
                        + " values (?, 1, ?, '5 g', 5, true)")
                .params(entry, supply)
                .update();
        jdbc.sql("insert into bench_use_piece (bench_entry_id, line, piece_id, weight) values (?, 1, ?, 1)")
                .params(entry, tray)
                .update();
    }

    private static byte[] picture(int shade) throws Exception {
        BufferedImage image = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 40; x++) {
            for (int y = 0; y < 30; y++) {
                image.setRGB(x, y, shade);
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "jpg", out);
        return out.toByteArray();
    }

    private ResultActions pattern(String title, String body) throws Exception {
        return mvc.perform(post("/listing/patterns")
                .with(owner())
                .param("id", pattern.toString())
                .param("name", "For the stall")
                .param("title", title)
                .param("body", body));
    }

    private ResultActions text(String act, long version, String title, String body) throws Exception {
        return mvc.perform(post("/listing/" + offer + "?pattern=" + pattern)
                .with(owner())
                .param("act", act)
                .param("version", Long.toString(version))
                .param("title", title)
                .param("body", body));
    }

    private ResultActions page(String path) throws Exception {
        return mvc.perform(get(path).with(owner())).andExpect(status().isOk());
    }

    private void say(String path, String... parameters) throws Exception {
        var request = post(path).with(owner());
        for (int i = 0; i < parameters.length; i += 2) {
            request.param(parameters[i], parameters[i + 1]);
        }
        mvc.perform(request).andExpect(status().is3xxRedirection());
    }
}
