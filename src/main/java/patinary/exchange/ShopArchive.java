package patinary.exchange;

import java.io.EOFException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipException;
import java.util.zip.ZipOutputStream;
import org.springframework.stereotype.Service;
import patinary.ledger.Problem;
import patinary.ledger.Refused;

/** The whole shop as CSV files, out and in; docs/handbook/archive.md. */
@Service
public class ShopArchive {

    private final ArchiveExport export;
    private final ArchiveImport imports;

    ShopArchive(ArchiveExport export, ArchiveImport imports) {
        this.export = export;
        this.imports = imports;
    }

    /** Writes the shop as a zip. The stream is left open. */
    public void exportZip(OutputStream stream, Progress progress) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(stream);
        export.write(new ZipSink(zip), progress);
        zip.finish();
        zip.flush();
    }

    /** Writes the shop as a zip with what its books say beside it. The stream is left open. */
    public void backup(OutputStream stream, Progress progress) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(stream);
        export.writeWithFigures(new ZipSink(zip), progress);
        zip.finish();
        zip.flush();
    }

    /**
     * Reads a zip that was just written once more, every byte of it, and holds it against its manifest.
     *
     * @throws ArchiveRefused where it is not what was written
     */
    public static void readBack(Path zip) throws IOException {
        try (ArchiveSource source = source(zip)) {
            new ManifestCheck(source, new ErrorList()).runStrictly();
        }
    }

    /** Writes the shop as files in a folder, which is made where it is missing. */
    public void exportFolder(Path folder, Progress progress) throws IOException {
        Files.createDirectories(folder.resolve(PhotoTables.FOLDER));
        export.write(name -> Files.newOutputStream(folder.resolve(name)), progress);
    }

    /**
     * Takes an archive into this empty shop.
     *
     * @param archive a zip, or a folder with its files
     * @throws ArchiveRefused with everything that is wrong with it; nothing was stored
     */
    public void load(Path archive, Progress progress) throws IOException {
        try (ArchiveSource source = source(archive)) {
            load(source, progress);
        }
    }

    /** @throws ArchiveRefused where it is neither a folder nor a zip that can be read */
    static ArchiveSource source(Path archive) throws IOException {
        try {
            return Files.isDirectory(archive) ? new FolderSource(archive) : new ZipSource(archive);
        } catch (ZipException | EOFException | IllegalArgumentException noZip) {
            throw new ArchiveRefused(ArchiveError.ofFile("", "no-zip"));
        }
    }

    /** Whether nothing has been recorded in this shop, so that an archive may come in. */
    public boolean isShopEmpty() {
        return imports.isShopEmpty();
    }

    void refuseUnlessEmpty() {
        imports.refuseUnlessEmpty();
    }

    void load(ArchiveSource source, Progress progress) throws IOException {
        ArchiveCheck check = new ArchiveCheck(source, progress);
        Cells cells = check.run();
        try {
            imports.store(source, cells, progress);
        } catch (Refused refused) {
            ErrorList errors = new ErrorList();
            refused.problems().forEach(problem -> errors.add(error(check, problem)));
            errors.refuseIfAny();
            throw refused;
        }
    }

    private static ArchiveError error(ArchiveCheck check, Problem problem) {
        ArchiveCheck.Place place = check.where(problem.document().id());
        return new ArchiveError(
                place == null ? "" : place.file(),
                place == null ? 0 : place.line(),
                "",
                check.label(problem.subject()),
                problem.reason().messageKey(),
                java.util.List.of(
                        check.label(problem.subject()),
                        problem.document().date().toString()));
    }
}
