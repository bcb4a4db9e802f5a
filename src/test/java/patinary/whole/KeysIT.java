package patinary.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import patinary.testing.ShopTest;

/** No page and no deletion looks through a whole table for the rows that refer to another. */
@ShopTest
class KeysIT {

    @Autowired
    private DataSource store;

    @Test
    void everyForeignKeyStartsAnIndex() throws SQLException {
        try (Connection connection = store.getConnection()) {
            DatabaseMetaData about = connection.getMetaData();
            List<String> without = new ArrayList<>();
            int keys = 0;
            for (String table : tables(about, connection.getSchema())) {
                Set<String> led = led(about, connection.getSchema(), table);
                for (String column : referring(about, connection.getSchema(), table)) {
                    keys++;
                    if (!led.contains(column)) {
                        without.add(table + "." + column);
                    }
                }
            }
            assertThat(keys).isGreaterThan(100);
            assertThat(without).isEmpty();
        }
    }

    private static List<String> tables(DatabaseMetaData about, String schema) throws SQLException {
        List<String> tables = new ArrayList<>();
        try (ResultSet rows = about.getTables(null, schema, null, new String[] {"TABLE", "BASE TABLE"})) {
            while (rows.next()) {
                tables.add(rows.getString("TABLE_NAME"));
            }
        }
        return tables;
    }

    /** The first column of each foreign key. */
    private static Set<String> referring(DatabaseMetaData about, String schema, String table) throws SQLException {
        Set<String> columns = new HashSet<>();
        try (ResultSet rows = about.getImportedKeys(null, schema, table)) {
            while (rows.next()) {
                if (rows.getInt("KEY_SEQ") == 1) {
                    columns.add(rows.getString("FKCOLUMN_NAME").toLowerCase(Locale.ROOT));
                }
            }
        }
        return columns;
    }

    /** The first column of each index. */
    private static Set<String> led(DatabaseMetaData about, String schema, String table) throws SQLException {
        Set<String> columns = new HashSet<>();
        try (ResultSet rows = about.getIndexInfo(null, schema, table, false, true)) {
            while (rows.next()) {
                if (rows.getInt("ORDINAL_POSITION") == 1 && rows.getString("COLUMN_NAME") != null) {
                    columns.add(rows.getString("COLUMN_NAME").toLowerCase(Locale.ROOT));
                }
            }
        }
        return columns;
    }
}
