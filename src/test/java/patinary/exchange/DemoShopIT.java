package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.ledger.Check;
import patinary.ledger.Finding;
import patinary.testing.ShopTest;

/** The demo shop on either database: its files come back to the byte, and its books are right. */
@ShopTest
class DemoShopIT {

    @Autowired
    private ShopArchive archive;

    @Autowired
    private ArchiveExport export;

    @Autowired
    private Check check;

    @Autowired
    private JdbcClient jdbc;

    @Test
    void comesBackToTheByteAndItsBooksAreRight() throws IOException {
        ClasspathSource demo = new ClasspathSource("/db/demo/");

        archive.load(demo, Progress.SILENT);

        MemoryArchive back = new MemoryArchive();
        export.write(back.sink(), Progress.SILENT);
        assertThat(back.names()).isEqualTo(demo.names());
        for (String file : demo.names()) {
            assertThat(back.open(file)).as(file).hasSameContentAs(demo.open(file));
        }
        assertThat(check.run()).isEmpty();
        assertThat(count("select count(*) from uncosted_use")).isZero();
        assertThat(count("select count(*) from stock_left where quantity < 0 or cost_minor < 0"))
                .isZero();
        assertThat(count("select count(*) from piece_figures where cost_minor < 0"))
                .isZero();
        assertThat(count("select count(*) from (select doc_date, -sum(amount_minor) as profit_minor from year_row"
                        + " where part in ('INCOME', 'EXPENSE', 'COST') group by doc_date having sum(amount_minor) <> 0"
                        + " except select doc_date, sum(profit_minor) from document_profit group by doc_date) x"))
                .as("days whose kept profit is not that of the year's page")
                .isZero();
        assertThat(count("select count(*) from money_left ml join money_place p on p.id = ml.place_id"
                        + " where p.kind in ('CASH', 'CHANNEL') and ml.amount_minor < 0"))
                .isZero();
    }

    @Test
    void checkSaysWhereTheBooksAreNotRight() throws IOException {
        archive.load(new ClasspathSource("/db/demo/"), Progress.SILENT);
        jdbc.sql("update posting set amount_minor = amount_minor + 1 where account = 'PIECES' and line = 0"
                        + " and document_id = (select id from opening)")
                .update();

        assertThat(check.run())
                .extracting(Finding::what)
                .contains(
                        Finding.What.POSTING,
                        Finding.What.DOCUMENT_BALANCE,
                        Finding.What.LEDGER_BALANCE,
                        Finding.What.COST_KEPT,
                        Finding.What.PIECE)
                .doesNotContain(Finding.What.PROBLEM, Finding.What.STOCK);
    }

    @Test
    void checkMissesNoRowThatIsGoneAndNoneThatIsTooMany() throws IOException {
        archive.load(new ClasspathSource("/db/demo/"), Progress.SILENT);
        jdbc.sql("delete from posting where document_id = (select id from expense order by id fetch first 1 rows only)")
                .update();
        jdbc.sql("insert into uncosted_use (document_id, line, supply_id, place, quantity)"
                        + " select d.id, 0, s.id, 'BENCH', 5 from opening d, supply s where s.name = 'Pond green'")
                .update();

        assertThat(check.run())
                .extracting(Finding::what)
                .as("the last is the profit of the expense, which is kept")
                .containsExactlyInAnyOrder(
                        Finding.What.POSTING,
                        Finding.What.POSTING,
                        Finding.What.COST_KEPT,
                        Finding.What.UNCOSTED,
                        Finding.What.KEPT_FIGURE);
    }

    private long count(String sql) {
        return jdbc.sql(sql).query(Long.class).single();
    }
}
