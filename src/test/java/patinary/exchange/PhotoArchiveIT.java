package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.util.FileSystemUtils;
import patinary.photos.DrawnPhotos;
import patinary.photos.PhotoCheck;
import patinary.photos.PhotoFolder;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** Photos go out with the archive and come back to the byte; what is not as it says is refused. */
@ShopTest
class PhotoArchiveIT {

    private static final String PIECE = "00000000-0000-4000-8000-00000000000b";

    @Autowired
    private ApplicationContext program;

    @Autowired
    private ShopArchive archive;

    @Autowired
    private ArchiveExport export;

    @Autowired
    private DrawnPhotos drawn;

    @Autowired
    private PhotoFolder folder;

    @Autowired
    private PhotoCheck check;

    @Autowired
    private JdbcClient jdbc;

    @TempDir
    private Path scratch;

    private String name = "";

    @BeforeEach
    void onePieceWithADrawing() throws IOException {
        jdbc.sql("insert into piece (id, code, title, material, place, note, version)"
                        + " values (cast(? as uuid), 'P-1', 'Box', '', '', '', 0)")
                .param(PIECE)
                .update();
        InventedShop.keepFigures(program);
        drawn.hang();
        name = jdbc.sql("select sha256 from photo").query(String.class).single();
    }

    @Test
    void comeBackToTheByteFromAZipAndFromAFolder() throws IOException {
        MemoryArchive first = written();
        byte[] picture = Files.readAllBytes(folder.full(name).orElseThrow());
        Path zip = scratch.resolve("shop.zip");
        try (OutputStream stream = Files.newOutputStream(zip)) {
            archive.exportZip(stream, Progress.SILENT);
        }
        archive.exportFolder(scratch.resolve("shop"), Progress.SILENT);

        for (Path source : List.of(zip, scratch.resolve("shop"))) {
            forget();
            archive.load(source, Progress.SILENT);

            assertThat(folder.full(name).orElseThrow()).hasBinaryContent(picture);
            MemoryArchive again = written();
            assertThat(again.names()).isEqualTo(first.names());
            for (String file : first.names()) {
                assertThat(again.open(file)).as(file).hasSameContentAs(first.open(file));
            }
            assertThat(check.run()).noneMatch(finding -> finding.isLoss());
        }
    }

    @Test
    void anAlteredAMissingAndAStrangePictureAreRefused() throws IOException {
        MemoryArchive whole = written().without(Manifest.FILE);
        byte[] picture = Files.readAllBytes(folder.full(name).orElseThrow());
        forget();

        picture[picture.length / 2] ^= 1;
        assertThat(refused(whole.withBytes(PhotoTables.file(name), picture))).containsExactly("exchange.error.hash");
        assertThat(refused(whole.withBytes(PhotoTables.file(name), new byte[3])))
                .containsExactly("exchange.error.photo-size");
        assertThat(refused(whole.without(PhotoTables.file(name)))).containsExactly("exchange.error.file-missing");
        assertThat(refused(whole.withBytes(PhotoTables.file("0".repeat(64)), picture)))
                .containsExactlyInAnyOrder("exchange.error.file-missing", "exchange.error.photo-unknown");
        assertThat(refused(whole.withBytes("photos/../" + name + ".jpg", picture)))
                .contains("exchange.error.file-unknown");
    }

    @Test
    void aLostPictureKeepsNothingElseFromBeingSaved() throws IOException {
        forgetFiles();

        MemoryArchive lost = written();
        forget();
        archive.load(lost, Progress.SILENT);

        assertThat(lost.text(Manifest.FILE)).contains(PhotoTables.file(name) + ",missing");
        assertThat(check.run()).contains(new PhotoCheck.Finding(PhotoCheck.What.MISSING, name));
    }

    private List<String> refused(MemoryArchive wrong) {
        return catchThrowableOfType(ArchiveRefused.class, () -> archive.load(wrong, Progress.SILENT)).errors().stream()
                .map(ArchiveError::message)
                .toList();
    }

    private MemoryArchive written() throws IOException {
        MemoryArchive written = new MemoryArchive();
        export.write(written.sink(), Progress.SILENT);
        return written;
    }

    private void forget() throws IOException {
        jdbc.sql("delete from photo").update();
        jdbc.sql("delete from piece").update();
        forgetFiles();
    }

    private void forgetFiles() throws IOException {
        if (folder.full(name).isPresent()) {
            FileSystemUtils.deleteRecursively(folder.full(name).orElseThrow().getParent());
        }
    }
}
