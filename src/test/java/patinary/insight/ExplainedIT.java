package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static patinary.testing.InventedShop.owner;

import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.taxbasis.BasisBook;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;
import patinary.web.Fmt;

/** That every figure of the pages about pieces leads to what it is made of and how it is reckoned, in the invented demo shop. */
@ShopTest
class ExplainedIT {

    private static final List<String> PAGES = List.of(
            "/moves",
            "/moves?by=channel",
            "/moves?by=finish",
            "/moves?by=price",
            "/moves?by=season",
            "/moves/money",
            "/moves/money?by=line",
            "/moves/days",
            "/moves/days?by=finish",
            "/moves/days?by=channel",
            "/moves/money?by=season",
            "/moves/next",
            "/moves/next?by=kind",
            "/moves/seasons",
            "/moves/what-to-pay",
            "/moves/hours");
    private static final Pattern ROW = Pattern.compile("<tr\\b.*?</tr>", Pattern.DOTALL);
    private static final Pattern FIGURE = Pattern.compile("<td class=\"number\"[^>]*>(.*?)</td>", Pattern.DOTALL);
    private static final Pattern DEFINED = Pattern.compile("<dt>.*?</dt>", Pattern.DOTALL);
    private static final Pattern LINK = Pattern.compile("href=\"(/[^\"]*)\"");
    /** What a picture's own table shows: it stands under the figure that it opens, beside the pieces. */
    private static final Pattern OPENED = Pattern.compile(
            "<(section|details)\\b[^>]*id=\"(opened|curve|worked|rests-on|shared|judged)\".*?</\\1>", Pattern.DOTALL);

    @Autowired
    private MockMvc mvc;

    @Autowired
    private ShopArchive archive;

    @Autowired
    private Moves moves;

    @Autowired
    private MoneyReport money;

    @Autowired
    private Speeds speeds;

    @Autowired
    private ApplicationContext program;

    @Autowired
    private HourReport hours;

    @Autowired
    private HourYears hourYears;

    @Autowired
    private BasisBook bases;

    @Autowired
    private Fmt fmt;

    @Autowired
    private Traits traits;

    @Autowired
    private CurrentShop shop;

    @Autowired
    private JdbcClient jdbc;

    @BeforeEach
    void load() throws IOException {
        archive.load(Path.of("db", "demo"), Progress.SILENT);
    }

    @Test
    void everyFigureLeadsToItsRowsAndEveryWordToTheHandbook() throws Exception {
        for (String path : PAGES) {
            String page = page(path);
            assertThat(page).as(path).contains("href=\"/handbook/").doesNotContain("??");
            List<String> rows = all(ROW, OPENED.matcher(page).replaceAll(""));
            assertThat(rows).as(path).hasSizeGreaterThan(1);
            for (String row : rows) {
                boolean figures =
                        all(FIGURE, row).stream().anyMatch(cell -> text(cell).matches(".*[1-9].*"));
                assertThat(!figures || row.contains("<a ")).as(path + row).isTrue();
            }
            assertThat(all(DEFINED, page.replaceAll("(?s)<section.*</section>", "")))
                    .as(path)
                    .allMatch(word -> word.contains("href=\"/handbook/"));
        }
    }

    /** Once each way of a link, so that twenty rows of one table are not opened twenty times. */
    @Test
    void everyLinkOfThesePagesOpens() throws Exception {
        Set<String> seen = new LinkedHashSet<>();
        for (String path : PAGES) {
            for (String link : all(LINK, page(path))) {
                String kind = link.replaceAll("row=\\d+|share=\\d+|month=\\d+|first=[^&#]*|[0-9a-f-]{36}|#.*", "");
                if (link.startsWith("/moves") && seen.add(kind)) {
                    page(link.replaceAll("#.*", ""));
                }
            }
        }
        assertThat(seen).hasSizeGreaterThan(30);
    }

    @Test
    void theOpenedPiecesAddUpToTheFigure() {
        LocalDate today = shop.today();
        for (By by : By.values()) {
            MoveTable table = moves.table(by, today.minusYears(1), today, Narrowing.WHOLE);
            for (MoveRow row : Stream.concat(table.rows().stream(), Stream.of(table.whole()))
                    .toList()) {
                Behind behind = row.behind();
                assertThat(behind.lines(Behind.What.FOUND)).hasSize(row.found());
                assertThat(behind.lines(Behind.What.OFFERED)).hasSize(row.onOffer());
                assertThat(behind.lines(Behind.What.SOLD)).hasSize(row.sold());
                assertThat(behind.lines(Behind.What.WAITING)).hasSize(row.waiting());
                assertThat(behind.lines(Behind.What.DAYS)).hasSize(row.daysKnown());
                List<Behind.Line> sales = behind.lines(Behind.What.SALES);
                assertThat(sales.stream().map(Behind.Line::net).collect(Amount.sum()))
                        .isEqualTo(row.net());
                assertThat(sales.stream().map(Behind.Line::cost).collect(Amount.sum()))
                        .isEqualTo(row.cost());
                assertThat(sales.stream().map(Behind.Line::profit).collect(Amount.sum()))
                        .isEqualTo(row.profit());
            }
        }
        SeasonDays days = SeasonDays.of(moves.offers(), today);
        for (Seasons.Month month : days.seasons().months()) {
            List<SeasonDays.Month.Line> lines = days.month(month.number()).lines();
            assertThat(lines.stream().mapToLong(SeasonDays.Month.Line::days).sum())
                    .isEqualTo(month.days());
            assertThat(lines.stream().filter(line -> line.sold() != null).count())
                    .isEqualTo(month.sales());
        }
    }

    @Test
    void theOpenedPiecesOfTheMoneyAddUpToTheFigure() {
        LocalDate today = shop.today();
        Period year = new Period(today.minusYears(1), today);
        BigDecimal days = BigDecimal.valueOf(ChronoUnit.DAYS.between(year.first(), today) + 1);
        for (MoneyBy by : MoneyBy.values()) {
            MoneyTable table =
                    money.answer(by, year.first(), today, Narrowing.WHOLE).table();
            for (MoneyRow row : Stream.concat(table.rows().stream(), Stream.of(table.whole()))
                    .toList()) {
                List<MoneyPieces.Line> lines = MoneyPieces.of(row, money.minutes(year));
                List<SaleParts> sold = lines.stream()
                        .map(MoneyPieces.Line::parts)
                        .filter(Objects::nonNull)
                        .toList();
                String what = by.word() + " " + row.name();
                assertThat(sold.stream().collect(SaleParts.sum())).as(what).isEqualTo(row.parts());
                assertThat(sum(lines, MoneyPieces.Line::work)).as(what).isEqualTo(row.work());
                assertThat(lines.stream()
                                .map(MoneyPieces.Line::minutes)
                                .filter(Objects::nonNull)
                                .reduce(BigDecimal.ZERO, BigDecimal::add))
                        .as(what)
                        .isEqualByComparingTo(row.minutes());
                if (row.stock() != null) {
                    assertThat(sum(lines, MoneyPieces.Line::tied)).as(what).isEqualTo(row.tied());
                    BigDecimal average = BigDecimal.valueOf(
                                    sum(lines, MoneyPieces.Line::lay).minor())
                            .divide(days, MathContext.DECIMAL64);
                    StockRatios ratios =
                            new StockRatios(row.parts().net(), row.parts().cost(), average, days.intValueExact());
                    BigDecimal turn = ratios.turn();
                    assertThat(turn == null ? null : turn.setScale(2, RoundingMode.HALF_UP))
                            .as(what)
                            .isEqualTo(row.turn());
                }
            }
        }
    }

    private static Amount sum(List<MoneyPieces.Line> lines, Function<MoneyPieces.Line, @Nullable Amount> what) {
        return lines.stream().map(what).filter(Objects::nonNull).collect(Amount.sum());
    }

    /** A month's profit by the books and its bench minutes are the sums of the pages that they lead to; so are those of a tax year. */
    @Test
    void theHoursAddUpFromTheDocumentsTheyOpen() throws Exception {
        LocalDate today = shop.today();
        Period asked = new Period(today.minusYears(1), today);
        HourTable table = hours.table(asked);
        Amount profits = Amount.ZERO;
        for (HourTable.Month month : table.months()) {
            String days = "?from=" + month.first() + "&to=" + month.last();
            Amount listed = Amount.ZERO;
            String file = page("/year/profit.csv" + days);
            for (CSVRecord row : CSVFormat.RFC4180
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(new StringReader(file))
                    .getRecords()) {
                listed = listed.plus(Amount.of(
                        new BigDecimal(row.get("profit")).movePointRight(2).longValueExact()));
            }
            assertThat(listed).as(days).isEqualTo(month.profit());
            assertThat(month.profit().isZero() || page("/year/profit" + days).contains(fmt.money(month.profit())))
                    .as(days)
                    .isTrue();
            assertThat(month.minutes().signum() == 0
                            || page("/bench" + days).contains(fmt.minutes(month.wholeMinutes()) + " together"))
                    .as(days)
                    .isTrue();
            profits = profits.plus(listed);
        }
        assertThat(profits).isEqualTo(table.whole().profit()).isNotEqualTo(Amount.ZERO);
        List<HourYears.Year> years =
                hourYears.years().stream().map(hourYears::of).toList();
        assertThat(years)
                .hasSizeGreaterThan(1)
                .extracting(HourYears.Year::adjustment)
                .anyMatch(one -> !one.isZero());
        for (HourYears.Year year : years) {
            assertThat(year.books()).isEqualTo(bases.bookProfit(year.year()));
            assertThat(year.adjustment()).isEqualTo(bases.year(year.year()).profit());
            assertThat(page("/moves/hours/tax?year=" + year.year()))
                    .contains(fmt.money(year.taxed()))
                    .contains(fmt.money(year.truly()));
        }
    }

    /** What was on offer somewhere else alone and sold here is no piece of this channel: that it sold here is known only after. */
    @Test
    void aChannelIsWhereAPieceWasOnOfferAndNotWhereItSold() {
        String channel = jdbc.sql("select name from channel order by name")
                .query(String.class)
                .list()
                .get(0);
        UUID stall = UUID.randomUUID();
        jdbc.sql("insert into channel (id, name, money_place_id, passes_tax, version) "
                        + "select ?, 'Fair of one day', money_place_id, passes_tax, 0 from channel where name = ?")
                .params(stall, channel)
                .update();
        List<UUID> offered = jdbc.sql("""
                        select distinct sp.piece_id from sale_piece sp
                        where sp.piece_id in (select op.piece_id from offer_piece op)
                          and sp.sale_id in (select s.id from sale s join channel c on c.id = s.channel_id where c.name = ?)""").param(channel).query(UUID.class).list();
        assertThat(offered).isNotEmpty();
        jdbc.sql("update sale set channel_id = ? where channel_id = (select id from channel where name = ?)")
                .params(stall, channel)
                .update();
        InventedShop.keepFigures(program);
        Narrowing fair = traits.narrowing(Asked.of("channel:Fair of one day", ""));
        assertThat(fair.isWhole()).isFalse();
        assertThat(offered).noneMatch(fair::has);
        SoldWhere where = speeds.where(traits.narrowing(Asked.of("", "")), shop.today());
        assertThat(where.rows()).extracting(SoldWhere.Row::name).contains("Fair of one day");
        assertThat(where.rows().stream().mapToLong(SoldWhere.Row::ended).sum())
                .isEqualTo(where.whole().sold());
    }

    /** Of many kinds in many styles fifty stand on a page; what is opened there is the row of the whole list, and the file has them all. */
    @Test
    void longListsOfGroupsAreTurnedPageByPage() throws Exception {
        for (int kind = 0; kind < 60; kind++) {
            UUID id = new UUID(7, kind);
            jdbc.sql("insert into object_kind (id, name, version) values (?, ?, 0)")
                    .params(id, "Invented kind %02d".formatted(kind))
                    .update();
            jdbc.sql(
                            "update piece set kind_id = ? where id = (select id from piece order by id offset ? rows fetch first 1 row only)")
                    .params(id, kind)
                    .update();
        }
        for (String path : List.of("/moves/next", "/moves/what-to-pay")) {
            String second = page(path + "?groups=2&row=55");
            assertThat(second).as(path).contains("51 to ").contains("row=50").doesNotContain("row=49&");
            assertThat(page(path))
                    .as(path)
                    .contains("1 to 50 of ")
                    .contains("row=49")
                    .doesNotContain("row=50");
            assertThat(page(path + "?groups=99")).as(path).contains("Earlier in the list");
        }
    }

    /** To offer them, no page reads the prices of the whole shop; once one is chosen it says which prices they are. */
    @Test
    void priceBandsAreOfferedAsThirdsAndToldInMoneyOnceChosen() throws Exception {
        PriceBands bands = Objects.requireNonNull(moves.bands());
        String upTo = "Up to " + fmt.money(bands.low());
        assertThat(page("/moves"))
                .contains("Lowest third", "Middle third", "Highest third")
                .doesNotContain(upTo);
        assertThat(page("/moves?only=price:1")).contains(upTo).doesNotContain("Lowest third");
        assertThat(page("/moves?by=price")).contains(upTo);
    }

    @Test
    void twoGroupsTogetherAreThePiecesOfBoth() throws Exception {
        LocalDate today = shop.today();
        Narrowing whole = traits.narrowing(new Asked());
        assertThat(whole.choices()).extracting(Only::by).contains(Trait.values());
        List<UUID> pieces = jdbc.sql("select id from piece").query(UUID.class).list();
        for (Only only : whole.choices()) {
            Narrowing one = traits.narrowing(Asked.of(only.word(), ""));
            Narrowing other = traits.narrowing(Asked.of("", "season:2"));
            Narrowing both = traits.narrowing(Asked.of(only.word(), "season:2"));
            assertThat(pieces.stream().filter(both::has))
                    .as(only.word())
                    .containsExactlyElementsOf(
                            pieces.stream().filter(one::has).filter(other::has).toList());
        }
        List<String> styles = whole.choices().stream()
                .filter(only -> only.by() == Trait.STYLE)
                .map(Only::name)
                .toList();
        MoneyTable table =
                money.answer(MoneyBy.STYLE, today.minusYears(1), today, whole).table();
        assertThat(styles).isNotEmpty();
        for (MoneyRow row : table.rows()) {
            if (!row.name().isEmpty()) {
                Narrowing style = traits.narrowing(Asked.of("style:" + row.name(), ""));
                MoneyRow alone = money.answer(MoneyBy.KIND, today.minusYears(1), today, style)
                        .table()
                        .whole();
                assertThat(alone.profit()).as(row.name()).isEqualTo(row.profit());
                assertThat(alone.tied()).isEqualTo(row.tied());
                assertThat(speeds.answer(SpeedBy.KIND, style, today)
                                .table()
                                .whole()
                                .stays())
                        .hasSameSizeAs(speeds.answer(SpeedBy.STYLE, whole, today).table().rows().stream()
                                .filter(speed -> speed.name().equals(row.name()))
                                .flatMap(speed -> speed.stays().stream())
                                .toList());
            }
        }
        String asked = "only=" + whole.choices().get(0).word() + "&also=channel:no such channel";
        for (String path : PAGES) {
            String page = page(path + (path.contains("?") ? "&" : "?") + asked);
            assertThat(path.contains("hours") || page.contains("selected"))
                    .as(path)
                    .isTrue();
        }
    }

    /** Where it stood and where it sold are two things, so a channel's row is not the page narrowed to it. */
    @Test
    void aRowIsThePageNarrowedToItsGroup() {
        LocalDate today = shop.today();
        LocalDate first = today.minusYears(1);
        Narrowing whole = traits.narrowing(Asked.of("", ""));
        for (By by : By.values()) {
            MoveTable table = moves.table(by, first, today, whole);
            if (by.additive()) {
                assertThat(table.rows().stream().map(MoveRow::profit).collect(Amount.sum()))
                        .as(by.word())
                        .isEqualTo(table.whole().profit());
                assertThat(table.rows().stream().mapToInt(MoveRow::onOffer).sum())
                        .as(by.word())
                        .isEqualTo(table.whole().onOffer());
            }
            List<MoveRow> named = table.rows().stream()
                    .filter(row -> by != By.CHANNEL && !row.name().isEmpty())
                    .toList();
            assertThat(by == By.CHANNEL || !named.isEmpty()).as(by.word()).isTrue();
            for (MoveRow row : named) {
                Narrowing own = traits.narrowing(Asked.of(by.word() + ":" + row.name(), ""));
                MoveRow alone = moves.table(By.STYLE, first, today, own).whole();
                assertThat(List.of(alone.found(), alone.onOffer(), alone.sold(), alone.profit()))
                        .as(by.word() + " " + row.name())
                        .isEqualTo(List.of(row.found(), row.onOffer(), row.sold(), row.profit()));
            }
        }
    }

    private String page(String path) throws Exception {
        String[] parts = path.replace("&amp;", "&").split("\\?", 2);
        var request = get(parts[0]).with(owner());
        for (String parameter : parts.length < 2 ? new String[0] : parts[1].split("&")) {
            String[] pair = parameter.split("=", 2);
            request.param(pair[0], java.net.URLDecoder.decode(pair[1], java.nio.charset.StandardCharsets.UTF_8));
        }
        var answer = mvc.perform(request).andReturn().getResponse();
        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        return answer.getContentAsString();
    }

    private static String text(String markup) {
        return markup.replaceAll("(?s)<[^>]*>", " ").strip();
    }

    private static List<String> all(Pattern pattern, String text) {
        List<String> found = new ArrayList<>();
        Matcher match = pattern.matcher(text);
        while (match.find()) {
            found.add(match.group(match.groupCount()));
        }
        return found;
    }
}
