package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;

/** Every way in which an archive can be wrong is told with its file, line, column and value, and all at once. */
class ArchiveCheckTest {

    private static final String SHOP_HEADER =
            "name,currency,minor_digits,costing_method,hourly_rate,tax_table,first_day,time_zone";
    private static final String A = "00000000-0000-4000-8000-00000000000a";
    private static final String B = "00000000-0000-4000-8000-00000000000b";
    private static final String C = "00000000-0000-4000-8000-00000000000c";
    private static final String D = "00000000-0000-4000-8000-00000000000d";
    private static final String E = "00000000-0000-4000-8000-00000000000e";
    private static final String EXPENSE = "id,date,note,recorded_at,category,payee,place_id,amount";
    private static final String MOMENT = "2025-02-01T10:00:00Z";

    private final MemoryArchive archive = new MemoryArchive()
            .with("shop.csv", SHOP_HEADER, "Invented,USD,2,FIFO,20.00,plain,2025-01-01,UTC")
            .with("money_place.csv", "id,name,kind", A + ",Cash box,CASH");

    @Test
    void aRightArchivePasses() throws IOException {
        archive.with("expense.csv", EXPENSE, B + ",2025-02-01,," + MOMENT + ",office,," + A + ",12.50");

        assertThat(new ArchiveCheck(archive, Progress.SILENT).run().currency().code())
                .isEqualTo("USD");
    }

    /** Files of before fees could be fuller: the later columns and the later file are not there. */
    @Test
    void anArchiveOfTheFirstReleasePasses() throws IOException {
        archive.with("channel.csv", "id,name,money_place_id,passes_tax", B + ",Market," + A + ",no")
                .with("channel_fee.csv", "channel_id,valid_from,percent,fixed", B + ",2025-01-01,9.5,0.25");

        Cells cells = new ArchiveCheck(archive, Progress.SILENT).run();

        List<Row> rows = new ArrayList<>();
        new RowReader(archive, cells, new ErrorList(), Progress.SILENT)
                .read(ArchiveTables.named("channel_fee"), rows::add);
        assertThat(rows).singleElement().satisfies(row -> {
            assertThat(row.get("fixed")).isEqualTo(Amount.of(25));
            assertThat(row.has("base")).isFalse();
            assertThat(row.has("payment_fixed")).isFalse();
        });
    }

    @Test
    void takesAShopOfEveryTaxTableAndLanguage() throws IOException {
        for (String facts : List.of(
                "us-schedule-c,2025-01-01,UTC,en,US",
                "uk-self-employment-short,2025-04-06,UTC,en,GB",
                "plain,2025-01-01,UTC,es,MX")) {
            archive.with("shop.csv", SHOP_HEADER + ",language,country", "Invented,USD,2,FIFO,20.00," + facts);

            assertThat(new ArchiveCheck(archive, Progress.SILENT)
                            .run()
                            .currency()
                            .code())
                    .as(facts)
                    .isEqualTo("USD");
        }
        archive.with(
                "shop.csv", SHOP_HEADER + ",language,country", "Invented,USD,2,FIFO,20.00,plain,2025-01-01,UTC,xx,ZZ");

        assertThat(errors()).extracting(ArchiveError::column).containsExactly("language");
        archive.with(
                "shop.csv", SHOP_HEADER + ",language,country", "Invented,USD,2,FIFO,20.00,plain,2025-01-01,UTC,es,ZZ");

        assertThat(errors()).extracting(ArchiveError::column).containsExactly("country");
    }

    @Test
    void stillAsksForTheColumnsThatWereAlwaysThere() {
        archive.with("channel_fee.csv", "channel_id,valid_from,percent,base", B + ",2025-01-01,9.5,PRICE");

        assertThat(errors()).extracting(ArchiveError::column).contains("fixed").doesNotContain("least");
    }

    @Test
    void tellsEverythingAtOnceWithItsPlace() {
        archive.with("style.csv", "id,name", A + ",Pond", B + ",Pond", B + ",Moss", ",")
                .with("colour.csv", "id")
                .with(
                        "expense.csv",
                        EXPENSE,
                        B + ",2025-02-30,," + MOMENT + ",office,," + C + ",12.5",
                        "\"" + C + "\",2025-02-01,\"two\r\nlines\"," + MOMENT + ",office,," + C + ",0.00",
                        A + ",2025-02-01,," + MOMENT + ",office,," + B + ",1.00");

        assertThat(errors())
                .extracting(e -> e.file() + ":" + e.line() + ":" + e.column() + ":"
                        + e.message().replace("exchange.error.", ""))
                .containsExactlyInAnyOrder(
                        "colour.csv:0::file-unknown",
                        "style.csv:3:name:twice",
                        "style.csv:4:id:twice",
                        "style.csv:5:id:required",
                        "style.csv:5:name:required",
                        "expense.csv:2:date:date",
                        "expense.csv:2:amount:amount",
                        "expense.csv:3:amount:above-zero",
                        "expense.csv:5:place_id:dangling");
    }

    @Test
    void readsAmountsInTheShopsOwnCurrency() {
        archive.with("shop.csv", SHOP_HEADER, "Invented,JPY,0,FIFO,20,plain,2025-01-01,UTC")
                .with(
                        "expense.csv",
                        EXPENSE,
                        B + ",2025-02-01,," + MOMENT + ",office,," + A + ",12",
                        C + ",2025-02-01,," + MOMENT + ",office,," + A + ",12.50");

        assertThat(errors()).singleElement().satisfies(error -> {
            assertThat(error.line()).isEqualTo(3);
            assertThat(error.value()).isEqualTo("12.50");
        });
    }

    @Test
    void holdsRowsToTheRulesOfTheDatabase() {
        archive.with("receipt.csv", "id,date,note,recorded_at,source_id,trip_id,till_total", receipt(B, "1.00"))
                .with("receipt_payment.csv", "receipt_id,line,way,place_id,amount", B + ",1,PLACE,,1.00")
                .with(
                        "receipt_charge.csv",
                        "receipt_id,line,kind,title,percent,amount,taxed,after_tax",
                        B + ",1,TAX,,8,1.00,no,no",
                        B + ",2,FINE,,8,,no,no")
                .with("receipt_charge_line.csv", "receipt_id,charge,line", B + ",1,7");

        assertThat(errors())
                .extracting(e -> e.file() + ":" + e.column() + ":" + e.message().replace("exchange.error.", ""))
                .containsExactlyInAnyOrder(
                        "receipt_payment.csv:place_id:filled-where",
                        "receipt_charge.csv:amount:exactly-one",
                        "receipt_charge.csv:kind:word",
                        "receipt_charge_line.csv:line:dangling");
    }

    @Test
    void whatWasOwedOnTheFirstDayIsPaidAgainstTheOpening() {
        archive.with(
                        "opening.csv",
                        "id,date,note,recorded_at,odometer,last_closing",
                        B + ",2025-01-01,," + MOMENT + ",,")
                .with(
                        "bill_paid.csv",
                        "id,date,note,recorded_at,receipt_id,place_id,amount",
                        C + ",2025-02-01,," + MOMENT + "," + B + "," + A + ",5.00")
                .with(
                        "payment.csv",
                        "id,date,note,recorded_at,sale_id,buyer,place_id,amount",
                        D + ",2025-02-01,," + MOMENT + "," + B + ",," + A + ",5.00",
                        E + ",2025-02-01,," + MOMENT + "," + A + ",," + A + ",5.00");

        assertThat(errors())
                .extracting(e -> e.file() + ":" + e.line() + ":" + e.column() + ":"
                        + e.message().replace("exchange.error.", ""))
                .containsExactly("payment.csv:3:sale_id:dangling");
    }

    @Test
    void refusesOneIdForTwoKindsOfDocuments() {
        archive.with("receipt.csv", "id,date,note,recorded_at,source_id,trip_id,till_total", receipt(B, "1.00"))
                .with("expense.csv", EXPENSE, B + ",2025-02-01,," + MOMENT + ",office,," + A + ",12.50");

        assertThat(errors()).singleElement().satisfies(error -> {
            assertThat(error.message()).isEqualTo("exchange.error.twice");
            assertThat(error.file()).isEqualTo("expense.csv");
        });
    }

    @Test
    void refusesWhatIsNoTextOrNoTable() {
        archive.withBytes("style.csv", new byte[] {'i', 'd', ',', 'n', 'a', 'm', 'e', '\r', '\n', (byte) 0xC3, 'x'})
                .with("source.csv", "id,name,note,colour,name")
                .with("object_kind.csv", "id,name", A)
                .withBytes("supply_line.csv", new byte[0])
                .with("piece_tag.csv", "piece_id,tag", "\"a\"b,c");

        assertThat(errors())
                .extracting(e -> e.file() + ":" + e.line() + ":" + e.message().replace("exchange.error.", ""))
                .contains(
                        "style.csv:1:utf-8",
                        "source.csv:1:column-unknown",
                        "source.csv:1:column-twice",
                        "source.csv:1:column-missing",
                        "object_kind.csv:2:cells",
                        "supply_line.csv:1:header",
                        "piece_tag.csv:2:csv");
    }

    @Test
    void noticesAFileThatIsNotAsTheManifestSays() {
        archive.with("manifest.csv", "name,value", "format,1", "calculation,1", "shop.csv,00", "style.csv,00");

        assertThat(errors())
                .extracting(e -> e.file() + ":" + e.message().replace("exchange.error.", ""))
                .containsExactlyInAnyOrder("shop.csv:hash", "style.csv:file-missing", "money_place.csv:unlisted");
    }

    @Test
    void needsAShopWithAKnownCurrency() {
        archive.with("shop.csv", SHOP_HEADER, "Invented,QQQ,2,FIFO,20.00,plain,2025-01-01,UTC");
        assertThat(errors()).extracting(ArchiveError::message).containsExactly("exchange.error.currency");

        archive.without("shop.csv");
        assertThat(errors()).extracting(ArchiveError::message).containsExactly("exchange.error.no-shop");
    }

    @Test
    void countsErrorsBeyondThoseItKeeps() {
        String[] rows = new String[ErrorList.KEPT + 11];
        java.util.Arrays.fill(rows, "x,y");
        rows[0] = "id,name";
        archive.with("style.csv", rows);

        ArchiveRefused refused = refused();

        assertThat(refused.errors()).hasSize(ErrorList.KEPT);
        assertThat(refused.more()).isEqualTo(10);
    }

    /** What is a quantity already needs no name, and a unit keeps its own meaning. */
    @Test
    void refusesPacksAndMeasuresThatAreCalledLikeAnAmount() {
        archive.with("supply_line.csv", "id,name,maker", B + ",Pond paints,an invented maker")
                .with(
                        "supply.csv",
                        "id,supply_line_id,name,dimension,retail_price,low_quantity",
                        C + "," + B + ",Pond green,VOLUME,,")
                .with(
                        "supply_pack.csv",
                        "supply_id,name,quantity",
                        C + ",jar,500",
                        C + ",500 ml,500",
                        C + ",Liter,1000")
                .with("supply_measure.csv", "supply_id,name,quantity", C + ",dab,2", C + ",2 dabs,4");

        assertThat(errors())
                .extracting(e -> e.file() + ":" + e.line() + ":" + e.column() + ":" + e.value() + ":"
                        + e.message().replace("exchange.error.", ""))
                .containsExactlyInAnyOrder(
                        "supply_pack.csv:3:name:500 ml:no-name",
                        "supply_pack.csv:4:name:Liter:no-name",
                        "supply_measure.csv:3:name:2 dabs:no-name");
    }

    private static String receipt(String id, String total) {
        return id + ",2025-02-01,," + MOMENT + ",,," + total;
    }

    private List<ArchiveError> errors() {
        return refused().errors();
    }

    private ArchiveRefused refused() {
        return catchThrowableOfType(ArchiveRefused.class, () -> new ArchiveCheck(archive, Progress.SILENT).run());
    }
}
