package patinary.yearfolder;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;
import patinary.shop.CurrentShop;
import patinary.web.CsvWriter;
import patinary.web.NotFound;

/**
 * Writes a year's records as they are at one moment, however long the writing takes: each row goes from the database to the
 * file, and none is kept.
 */
@Service
@Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
class YearFolder {

    private static final String CSV = ".csv";

    private final YearTables tables;
    private final PaperPictures papers;
    private final FolderWords words;
    private final CurrentShop shop;

    YearFolder(YearTables tables, PaperPictures papers, FolderWords words, CurrentShop shop) {
        this.tables = tables;
        this.papers = papers;
        this.words = words;
        this.shop = shop;
    }

    /** One table as RFC 4180, UTF-8. */
    public void table(int year, String name, OutputStream out) throws IOException {
        FolderTable table = tables.of(year).tables().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new NotFound("file " + name));
        csv(table, out);
    }

    /** All tables as one workbook with live sums. */
    public void workbook(int year, OutputStream out) throws IOException {
        new YearWorkbook(shop.currency(), words).write(tables.of(year), out);
    }

    /** Everything in one folder, packed. */
    public void folder(int year, OutputStream out) throws IOException {
        YearTables.Year all = tables.of(year);
        try (FolderZip zip = new FolderZip(out, String.valueOf(year), all.last().atStartOfDay())) {
            zip.file("README.txt", file -> file.write(words.readme(all)));
            for (FolderTable table : all.tables()) {
                zip.file(table.name() + CSV, file -> csv(table, file));
            }
            zip.file(year + ".xlsx", file -> new YearWorkbook(shop.currency(), words).write(all, file));
            photos(year, zip);
            String hash = zip.file(Manifest.NAME, file -> file.write(new Manifest(zip.entries()).bytes()));
            zip.file("summary.pdf", file -> new SummaryPdf(words, shop).write(all, hash, file));
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        }
    }

    private void photos(int year, FolderZip zip) {
        papers.each(
                year,
                (name, file) -> file.ifPresent(path -> {
                    try {
                        zip.file(name, out -> Files.copy(path, out));
                    } catch (IOException failed) {
                        throw new UncheckedIOException(failed);
                    }
                }));
    }

    private void csv(FolderTable table, OutputStream out) throws IOException {
        Writer text = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
        CsvWriter writer = new CsvWriter(text, shop.currency(), table.headings());
        table.content().to(writer::row);
        text.flush();
    }
}
