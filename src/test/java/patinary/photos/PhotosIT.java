package patinary.photos;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.forwardedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockMultipartHttpServletRequestBuilder;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.figures.Figures;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.testing.StockedBench;

/** Photos taken in, shown, put in order, taken away and matched. */
@ShopTest
class PhotosIT {

    @Autowired
    private Figures figures;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private MockMvc web;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private PhotoRows rows;

    @Autowired
    private PhotoFolder folder;

    @Autowired
    private PhotoSweep sweep;

    @Autowired
    private PhotoCheck check;

    @Autowired
    private ApplicationContext program;

    private StockedBench bench;
    private UUID box;

    @BeforeEach
    void stock() {
        bench = new StockedBench(program);
        box = bench.box;
    }

    @Test
    void oneOfThreeFilesIsBadAndTheOthersAreKeptAndTheFormSentTwiceKeepsThemOnce() throws Exception {
        UUID id = UUID.randomUUID();
        for (int times = 0; times < 2; times++) {
            web.perform(form(id, box, "BEFORE")
                            .file(file("one.jpg", 60))
                            .file(new MockMultipartFile("file", "list.jpg", "image/jpeg", "a shopping list".getBytes()))
                            .file(file("two.jpg", 90)))
                    .andExpect(status().is(422))
                    .andExpect(content().string(containsString("list.jpg: no picture that can be kept")))
                    .andExpect(content().string(containsString("2 photos were kept")));
        }
        assertThat(photos()).hasSize(2).extracting(Photo::width).containsExactly(60, 90);
    }

    @Test
    void isSentWithItsExactTypeToThoseWhoAreSignedInOnly() throws Exception {
        UUID photo = add(box, "AFTER", 400);

        byte[] small = web.perform(get("/photos/" + photo + "/small").with(InventedShop.owner()))
                .andExpect(status().isOk())
                .andExpect(header().string("Content-Type", "image/jpeg"))
                .andExpect(header().string("X-Content-Type-Options", "nosniff"))
                .andExpect(header().string("Cache-Control", "max-age=31536000, private, immutable"))
                .andReturn()
                .getResponse()
                .getContentAsByteArray();
        assertThat(small).hasSizeLessThan(15_000);
        web.perform(get("/photos/" + photo + "/small").header("Accept", "image/*"))
                .andExpect(status().is3xxRedirection());
        web.perform(get("/photos/" + photo + "/small").accept("application/json"))
                .andExpect(status().isUnauthorized());
        web.perform(get("/photos/" + UUID.randomUUID() + "/small").with(InventedShop.owner()))
                .andExpect(status().isNotFound());
        web.perform(get("/photos/" + photo + "/huge").with(InventedShop.owner()))
                .andExpect(status().isNotFound());
        see("/pieces/" + box, "alt=\"Small box, After\"", "width=\"400\"", "/photos/" + photo + "/middle");
        see("/pieces", "/photos/" + photo + "/small", "width=\"320\"");
    }

    @Test
    void anAccountantLooksAndAddsNothing() throws Exception {
        UUID photo = add(box, "AFTER", 60);
        var accountant = SecurityMockMvcRequestPostProcessors.user("Kim").roles("ACCOUNTANT");

        web.perform(get("/photos/" + photo + "/full").with(accountant)).andExpect(status().isOk());
        web.perform(multipart("/photos")
                        .file(file("one.jpg", 60))
                        .param("id", UUID.randomUUID().toString())
                        .param("of", box.toString())
                        .with(SecurityMockMvcRequestPostProcessors.csrf())
                        .with(accountant))
                .andExpect(forwardedUrl("/refused"));
        assertThat(photos()).hasSize(1);
    }

    @Test
    void aDeliveryIsKeptOnceAndOneBeforeItsPieceMayComeAgain() throws Exception {
        UUID key = UUID.randomUUID();
        UUID later = UUID.randomUUID();
        deliver(key, later, 60)
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("is not known here yet")));
        assertThat(photos()).isEmpty();
        jdbc.sql("delete from piece_figures where piece_id = ?").param(box).update();
        jdbc.sql("delete from piece_state where piece_id = ?").param(box).update();
        jdbc.sql("update piece set id = ? where id = ?").params(later, box).update();
        transaction.executeWithoutResult(status -> figures.pieceMade(later));
        box = later;

        deliver(key, box, 60)
                .andExpect(status().isCreated())
                .andExpect(content().string(containsString(key.toString())));
        deliver(key, box, 60).andExpect(status().isOk());
        deliver(key, box, 90).andExpect(status().is(422));

        assertThat(photos()).singleElement().extracting(Photo::id).isEqualTo(key);
    }

    @Test
    void areMovedByTapsAndTheFirstFinishedOneStandsInFront() throws Exception {
        UUID before = add(box, "BEFORE", 50);
        UUID during = add(box, "DURING", 60);
        UUID after = add(box, "AFTER", 70);
        UUID more = add(box, "AFTER", 80);
        assertThat(ids()).containsExactly(after, before, during, more);

        act(more, "first");
        act(before, "later");
        act(before, "earlier");
        act(during, "earlier");
        assertThat(ids()).containsExactly(more, after, during, before);
        act(before, "AFTER");
        assertThat(rows.find(before).orElseThrow().stage()).isEqualTo(Stage.AFTER);

        act(more, "away");
        assertThat(ids()).containsExactly(after, during, before);
        see("/pieces/" + box, "Taken away", "/photos/" + more + "/arrange");
        act(more, "back");
        assertThat(ids()).containsExactly(more, after, during, before);
    }

    @Test
    void waitUntilTheyAreMatchedAndComeBackWhenTheirReceiptGoes() throws Exception {
        UUID receipt = bench.paintFor("12.00", StockedBench.DAY);
        UUID paper = add(receipt, "RECEIPT", 60);
        see("/receipts/" + receipt, "/photos/" + paper + "/middle");

        web.perform(post("/receipts/" + receipt + "/remove").with(InventedShop.owner()))
                .andExpect(redirectedUrl("/receipts"));
        see("/photos/match", "/photos/" + paper + "/small");

        web.perform(post("/photos/match")
                        .param("photo", paper.toString())
                        .param("action", "search")
                        .param("q", "long")
                        .with(InventedShop.owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Long crate")))
                .andExpect(content().string(containsString("checked")));
        web.perform(post("/photos/match").param("to", box.toString()).with(InventedShop.owner()))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Tick at least one photo")));
        web.perform(post("/photos/match")
                        .param("photo", paper.toString())
                        .param("stage", "DURING")
                        .param("to", box.toString())
                        .with(InventedShop.owner()))
                .andExpect(redirectedUrl("/photos/match"));
        assertThat(ids()).containsExactly(paper);
    }

    @Test
    void losesOnlyFilesThatNothingNamesAndTellsWhatIsLost() throws Exception {
        UUID kept = add(box, "AFTER", 61);
        UUID gone = add(box, "AFTER", 62);
        Path file = folder.full(sha(kept)).orElseThrow();
        Path other = folder.full(sha(gone)).orElseThrow();
        jdbc.sql("update photo set taken_away_at = ? where id = ?")
                .params(OffsetDateTime.parse("2025-01-01T00:00:00Z"), gone)
                .update();

        sweep.sweep();
        assertThat(other).as("within its time of grace").exists();
        assertThat(rows.find(gone)).isEmpty();
        for (Path old : List.of(file, other)) {
            Files.setLastModifiedTime(old, FileTime.from(Instant.EPOCH));
        }
        assertThat(check.run()).contains(new PhotoCheck.Finding(PhotoCheck.What.UNKNOWN, name(other)));
        sweep.sweep();
        assertThat(other).doesNotExist();
        assertThat(file).exists();

        Files.writeString(file, "altered");
        assertThat(check.run()).contains(new PhotoCheck.Finding(PhotoCheck.What.ALTERED, name(file)));
        Files.delete(file);
        assertThat(check.run()).contains(new PhotoCheck.Finding(PhotoCheck.What.MISSING, name(file)));
    }

    @Test
    void theSmallerSizesAreMadeAgainWhereTheyAreMissing() throws Exception {
        UUID photo = add(box, "AFTER", 1000);
        Path small = folder.find(sha(photo), Size.SMALL).orElseThrow();
        Files.delete(small);

        web.perform(get("/photos/" + photo + "/small").with(InventedShop.owner()))
                .andExpect(status().isOk());

        assertThat(small).exists();
    }

    /** Letters for the crate, which has no picture; the box's picture is asked for later, by its address. */
    @Test
    void aPhoneIsToldWhichPictureShowsWhichPieceAndForgetsThemAtTheSignOut() throws Exception {
        UUID photo = add(box, "AFTER", 1000);

        see(
                "/bench/now",
                "data-picture=\"" + photo + "\"",
                "src=\"/photos/" + photo + "/small\" width=\"56\"",
                ">SB</span>");
        see("/phone/lists", "\"pictures\":[{\"value\":\"" + box + "\",\"photo\":\"" + photo + "\"}]");
        web.perform(post("/sign-out").secure(true).with(InventedShop.owner()))
                .andExpect(header().string("Clear-Site-Data", "\"cache\""));
    }

    private ResultActions deliver(UUID key, UUID of, int width) throws Exception {
        return web.perform(form(key, of, "BEFORE")
                .file(file("photo.jpg", width))
                .header("Idempotency-Key", "\"" + key + "\"")
                .accept("application/json"));
    }

    private UUID add(UUID of, String stage, int width) throws Exception {
        UUID id = UUID.randomUUID();
        web.perform(form(id, of, stage).file(file("photo.jpg", width))).andExpect(status().isSeeOther());
        return id;
    }

    private void act(UUID photo, String act) throws Exception {
        web.perform(post("/photos/" + photo + "/arrange").param("act", act).with(InventedShop.owner()))
                .andExpect(redirectedUrl("/pieces/" + box + "#photos"));
    }

    private void see(String path, String... words) throws Exception {
        ResultActions page = web.perform(get(path).with(InventedShop.owner())).andExpect(status().isOk());
        for (String word : words) {
            page.andExpect(content().string(containsString(word)));
        }
    }

    private static MockMultipartHttpServletRequestBuilder form(UUID id, UUID of, String stage) {
        return (MockMultipartHttpServletRequestBuilder) multipart("/photos")
                .param("id", id.toString())
                .param("of", of.toString())
                .param("stage", stage)
                .with(InventedShop.owner());
    }

    private static MockMultipartFile file(String name, int width) {
        return new MockMultipartFile("file", name, "image/jpeg", Pixels.jpeg(width, 40));
    }

    private List<Photo> photos() {
        return rows.of(new Subject(Subject.Kind.PIECE, box));
    }

    private List<UUID> ids() {
        return photos().stream().map(Photo::id).toList();
    }

    private String sha(UUID photo) {
        return rows.find(photo).orElseThrow().sha256();
    }

    private static String name(Path file) {
        return file.getFileName().toString().replace(".jpg", "");
    }
}
