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
import patinary.ledger.Check;
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

    @Autowired
    private Check check;

    @TempDir
    private Path folder;

    private final MemoryArchive small = new MemoryArchive()
            .with(
                    "shop.csv",
                    "name,currency,minor_digits,costing_method,hourly_rate,tax_table,first_day,time_zone,language,country",
                    "Invented Attic,EUR,2,AVERAGE,12.00,plain,2025-01-01,Europe/Paris,es,FR")
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
    void aimsComeBack() throws IOException {
        small.with(
                "aim.csv",
                "shop_id,horizon_days,salvage,target,target_percent,purchase_tax_percent,price_endings",
                "1,180,2.00,10.00,30,0,.95");
        archive.load(small, Progress.SILENT);
        MemoryArchive first = new MemoryArchive();
        export.write(first.sink(), Progress.SILENT);

        assertThat(first.text("aim.csv")).isEqualTo(small.text("aim.csv"));
    }

    /** Four units were sealed; today the same opening gives four and a half. */
    @Test
    void whatWasSealedComesBackAsItWasSealed() throws IOException {
        String seal = "dddddddd-0000-4000-8000-000000000004";
        small.with(
                        "year_seal.csv",
                        "id,date,note,recorded_at,tax_year,postings_hash,calculation_version",
                        seal + ",2025-12-31,,2026-02-01T08:00:00Z,2025,,1")
                .with(
                        "sealed_posting.csv",
                        "document_id,line,year_seal_id,doc_date,account,place_id,category,piece_id,supply_id,party_id,origin_id,estimated,amount,quantity",
                        C + ",0," + seal + ",2025-01-01,PIECES,,," + B + ",,,,yes,4.00,0",
                        C + ",1," + seal + ",2025-01-01,OPENING,,,,,,,no,-4.00,0");
        archive.load(small, Progress.SILENT);

        assertThat(jdbc.sql("select doc_date, amount_minor from posting where account = 'PIECES' order by doc_date")
                        .query((row, number) ->
                                row.getDate("doc_date").toLocalDate() + " " + row.getLong("amount_minor"))
                        .list())
                .containsExactly("2025-01-01 400", "2026-01-01 50");
        assertThat(check.run()).isEmpty();
        MemoryArchive first = new MemoryArchive();
        export.write(first.sink(), Progress.SILENT);
        assertThat(first.text("sealed_posting.csv").lines().count()).isEqualTo(3);
        jdbc.sql("update sealed_posting set amount_minor = amount_minor + 1 where account = 'PIECES'")
                .update();
        assertThat(check.run()).as("what was kept was tampered with").isNotEmpty();
    }

    @Test
    void aSealFromBeforeItsPostingsWereKeptKeepsWhatTheDocumentsGive() throws IOException {
        String seal = "dddddddd-0000-4000-8000-000000000004";
        small.with(
                "year_seal.csv",
                "id,date,note,recorded_at,tax_year,postings_hash,calculation_version",
                seal + ",2025-12-31,,2026-02-01T08:00:00Z,2025,,1");
        archive.load(small, Progress.SILENT);

        assertThat(jdbc.sql("select sum(amount_minor) from sealed_posting where account = 'PIECES'")
                        .query(Long.class)
                        .single())
                .isEqualTo(450);
        assertThat(jdbc.sql("select count(*) from posting where doc_date > date '2025-12-31'")
                        .query(Long.class)
                        .single())
                .isZero();
        assertThat(check.run()).isEmpty();
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
