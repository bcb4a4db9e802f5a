package patinary.exchange;

import static patinary.exchange.TableBuilder.table;

import java.util.List;
import patinary.photos.PhotoFolder;

/** The file of photos; the pictures themselves stand beside it, each under {@link #file} of its row. */
final class PhotoTables {

    static final String NAME = "photo";
    static final String FOLDER = "photos/";
    private static final String ENDING = ".jpg";

    static final List<ArchiveTable> ALL = List.of(table(NAME)
            .key("id")
            .id("id")
            .ref("piece_id", "piece")
            .optional()
            // Of whatever kind: looked for among all documents by ArchiveCheck.
            .column("document_id", Type.ID)
            .optional()
            .words("stage", "BEFORE", "DURING", "AFTER", "RECEIPT")
            .column("sort_order", Type.WHOLE)
            .column("width", Type.WHOLE)
            .aboveZero()
            .column("height", Type.WHOLE)
            .aboveZero()
            .column("bytes", Type.WHOLE)
            .aboveZero()
            .name("sha256", 64)
            .column("taken_on", Type.DATE)
            .optional()
            .column("added_at", Type.MOMENT)
            .name("added_by", 60)
            .column("taken_away_at", Type.MOMENT)
            .optional()
            .rule(Rule.atMostOne("piece_id", "document_id"))
            .rule(new Rule("sha256", "sha256", row -> PhotoFolder.isName(row.word("sha256"))))
            .done());

    private PhotoTables() {}

    /** The name in the archive of the picture with this SHA-256. */
    static String file(String sha256) {
        return FOLDER + sha256 + ENDING;
    }

    /** Whether a name in an archive is one of a picture, and so the only one with a folder. */
    static boolean isFile(String name) {
        return name.startsWith(FOLDER)
                && name.endsWith(ENDING)
                && PhotoFolder.isName(name.substring(FOLDER.length(), name.length() - ENDING.length()));
    }
}
