package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.shop.CurrentAims;
import patinary.shop.CurrentShop;
import patinary.testing.ShopTest;

/** That the queries which the pages are measured by give the very numbers of the pages, in the invented demo shop. */
@ShopTest(open = false)
class PlainNumbersIT {

    @Autowired
    private ShopArchive archive;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private CurrentShop shop;

    @Autowired
    private CurrentAims aims;

    @Autowired
    private Moves moves;

    @Autowired
    private MoneyReport money;

    @Autowired
    private NextReport next;

    @Autowired
    private SeasonReport seasons;

    @Autowired
    private HourReport hours;

    @Autowired
    private Speeds speeds;

    @Autowired
    private Outcomes outcomes;

    private PlainNumbers plain;
    private Period year;

    @BeforeEach
    void demo() throws IOException {
        archive.load(Path.of("db/demo"), Progress.SILENT);
        LocalDate today = shop.today();
        year = Period.asked("", "", today);
        plain = new PlainNumbers(jdbc, new PlainNumbers.Shop(today, aims.get(), shop.hourlyRate()));
    }

    @Test
    void whatMoves() {
        same("moves", moves.table(By.STYLE, year.first(), year.last(), Narrowing.WHOLE));
    }

    @Test
    void money() {
        same("moves/money", money.answer(MoneyBy.STYLE, year.first(), year.last(), Narrowing.WHOLE));
    }

    @Test
    void whatToMakeNext() {
        var rows = next.rows(MakeNext.Order.HOUR, Together.BOTH, Narrowing.WHOLE);
        same("moves/next", new PlainNumbers.Next(rows, next.ready(rows, Together.BOTH)));
    }

    @Test
    void months() {
        SeasonReport.Answer answer = seasons.answer(Narrowing.WHOLE, shop.today());
        same("moves/seasons", new PlainNumbers.Months(answer.seasons(), answer.cohorts()));
    }

    @Test
    void hours() {
        same("moves/hours", hours.table(year));
    }

    @Test
    void days() {
        same("moves/days", speeds.answer(SpeedBy.STYLE, Narrowing.WHOLE, shop.today()));
    }

    @Test
    void whereItSold() {
        same("moves/days?by=channel", speeds.where(Narrowing.WHOLE, shop.today()));
    }

    @Test
    void whatToPay() {
        same("moves/what-to-pay", outcomes.answer(Narrowing.WHOLE));
    }

    /** Where a piece sold is told, and asked for, on the page of the channels alone. */
    private void same(String page, Object shown) {
        String leftOut = page.endsWith("channel") ? "" : "channel";
        List<String> told = Outlined.of(shown, leftOut);
        List<String> apart = Outlined.of(Objects.requireNonNull(plain.of(page)), leftOut);
        assertThat(told).hasSizeGreaterThan(5);
        for (int i = 0; i < Math.min(told.size(), apart.size()); i++) {
            assertThat(apart.get(i)).as("line %s of %s", i, told.size()).isEqualTo(told.get(i));
        }
        assertThat(apart).hasSameSizeAs(told);
    }
}
