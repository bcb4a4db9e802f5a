package patinary.listing;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import patinary.photos.PhotoFolder;
import patinary.web.Ids;
import patinary.web.NotFound;

/**
 * The photos of an offer's pieces in one file: by code and number, in her order. They hold nothing but the picture, as all
 * photos are freed of the rest when they are taken in.
 */
@Controller
class PhotoZipController {

    private record Row(String code, String sha256) {}

    private final OfferReader offers;
    private final JdbcClient jdbc;
    private final PhotoFolder folder;

    PhotoZipController(OfferReader offers, JdbcClient jdbc, PhotoFolder folder) {
        this.offers = offers;
        this.jdbc = jdbc;
        this.folder = folder;
    }

    @GetMapping("/listing" + Ids.PATH + "/photos.zip")
    void download(@PathVariable UUID id, HttpServletResponse response) throws IOException {
        OfferFacts offer = offers.find(id).orElseThrow(() -> new NotFound("Offer " + id));
        List<Row> rows = rows(id);
        if (rows.isEmpty()) {
            throw new NotFound("photos of offer " + id);
        }
        response.setContentType("application/zip");
        response.setHeader(
                HttpHeaders.CONTENT_DISPOSITION,
                ContentDisposition.attachment()
                        .filename("photos-" + String.join("-", TextController.codes(offer)) + ".zip")
                        .build()
                        .toString());
        try (ZipOutputStream zip = new ZipOutputStream(response.getOutputStream())) {
            // Pictures are packed already.
            zip.setLevel(Deflater.NO_COMPRESSION);
            write(zip, rows);
        }
    }

    private void write(ZipOutputStream zip, List<Row> rows) throws IOException {
        Map<String, Integer> numbers = new HashMap<>();
        for (Row row : rows) {
            Optional<Path> file = folder.full(row.sha256());
            if (file.isPresent()) {
                String code = row.code().replaceAll("[^A-Za-z0-9-]", "");
                zip.putNextEntry(new ZipEntry(code + "-" + numbers.merge(code, 1, Integer::sum) + ".jpg"));
                Files.copy(file.get(), zip);
                zip.closeEntry();
            }
        }
    }

    private List<Row> rows(UUID offer) {
        return jdbc.sql("""
                        select p.code, h.sha256
                        from offer_piece op
                        join piece p on p.id = op.piece_id
                        join photo h on h.piece_id = p.id
                        where op.offer_id = ? and h.taken_away_at is null
                        order by p.code, h.sort_order, h.added_at, h.id""").param(offer).query(Row.class).list();
    }
}
