package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.invented.InventedShop;
import patinary.ledger.Check;
import patinary.testing.ShopTest;

/** A shop of any size that was made up is one that the program takes, with books that are right. */
@ShopTest
class InventedShopIT {

    @TempDir
    private Path folder;

    @Autowired
    private ShopArchive archive;

    @Autowired
    private Check check;

    @Autowired
    private JdbcClient jdbc;

    @Test
    void isTakenInAndItsBooksAreRight() throws IOException {
        Path zip = folder.resolve("invented.zip");
        new InventedShop(3, 60).write(zip);

        archive.load(zip, Progress.SILENT);

        assertThat(check.run()).isEmpty();
        assertThat(count("select count(*) from piece")).isEqualTo(60);
        assertThat(count("select count(*) from sale")).isBetween(35L, 58L);
        assertThat(count("select count(*) from uncosted_use")).isZero();
        assertThat(count("select count(*) from money_left ml join money_place p on p.id = ml.place_id"
                        + " where p.kind = 'CHANNEL' and ml.amount_minor < 0"))
                .isZero();
    }

    private long count(String sql) {
        return jdbc.sql(sql).query(Long.class).single();
    }
}
