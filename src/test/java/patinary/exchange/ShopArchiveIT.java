package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.testing.ShopTest;

@ShopTest
class ShopArchiveIT {

    private static final String A = "00000000-0000-4000-8000-00000000000a";
    private static final String B = "00000000-0000-4000-8000-00000000000b";
    private static final String C = "f0000000-0000-4000-8000-00000000000c";
    private static final String D = "00000000-0000-4000-8000-00000000000d";

    @Autowired
    private ShopArchive archive;

    @Autowired
    private ArchiveExport export;

    @Autowired
    private JdbcClient jdbc;

    @TempDir
    private Path folder;

    private final MemoryArchive small = new MemoryArchive()
            .with(
                    "shop.csv",
                    "name,currency,minor_digits,costing_method,hourly_rate,tax_table,first_day,time_zone",
                    "Invented Attic,EUR,2,AVERAGE,12.00,plain,2025-01-01,Europe/Paris")
            .with("money_place.csv", "id,name,kind", A + ",'=cash,CASH")
            .with(
                    "piece.csv",
                    "id,code,title,kind_id,style_id,material,area_cm2,place,note,planned_finish_id,shape,shape_measures",
                    B + ",P-1,Box,,,,,,,,,")
            .with(
                    "opening.csv",
                    "id,date,note,recorded_at,odometer,last_closing",
                    C + ",2025-01-01,\"first\nday\",2025-01-01T08:00:00.250Z,1234.5,88.00")
            .with("opening_piece.csv", "opening_id,piece_id,cost,known", C + "," + B + ",4.50,no");

    @Test
    void takesInAnArchiveAndGivesItBack() throws IOException {
        archive.load(small, Progress.SILENT);
        MemoryArchive first = new MemoryArchive();
        export.write(first.sink(), Progress.SILENT);

        assertThat(first.text("shop.csv")).isEqualTo(small.text("shop.csv"));
        for (String file : small.names()) {
            assertThat(first.text(file)).as(file).isEqualTo(small.text(file));
        }
        assertThat(jdbc.sql("select sum(amount_minor) from posting where account = 'PIECES'")
                        .query(Long.class)
                        .single())
                .isEqualTo(450);
    }

    @Test
    void aZipOfTheSameShopHasTheSameBytes() throws IOException {
        archive.load(small, Progress.SILENT);
        Path one = zip("one.zip");
        Path two = zip("two.zip");

        assertThat(one).hasSameBinaryContentAs(two);
    }

    @Test
    void aShopThatIsNotEmptyTakesInNothing() throws IOException {
        archive.load(small, Progress.SILENT);

        ArchiveRefused refused = catchThrowableOfType(ArchiveRefused.class, () -> archive.load(small, Progress.SILENT));

        assertThat(refused.errors()).extracting(ArchiveError::message).containsExactly("exchange.error.not-empty");
    }

    @Test
    void whatTheBooksRefuseIsToldByFileAndLineAndNothingIsStored() {
        small.with("letting_go.csv", "id,date,note,recorded_at,piece_id,reason", gone(A), gone(D));

        ArchiveRefused refused = catchThrowableOfType(ArchiveRefused.class, () -> archive.load(small, Progress.SILENT));

        assertThat(refused.errors()).singleElement().satisfies(error -> {
            assertThat(error.file()).isEqualTo("letting_go.csv");
            assertThat(error.line()).isEqualTo(3);
            assertThat(error.value()).isEqualTo("P-1 Box");
            assertThat(error.message()).isEqualTo("ledger.problem.piece-already-gone");
        });
        assertThat(jdbc.sql("select (select count(*) from document) + (select count(*) from piece)")
                        .query(Long.class)
                        .single())
                .isZero();
    }

    private static String gone(String id) {
        return id + ",2025-02-01,,2025-02-01T08:00:00Z," + B + ",BROKEN";
    }

    private Path zip(String name) throws IOException {
        Path file = folder.resolve(name);
        try (OutputStream stream = Files.newOutputStream(file)) {
            archive.exportZip(stream, Progress.SILENT);
        }
        return file;
    }
}
