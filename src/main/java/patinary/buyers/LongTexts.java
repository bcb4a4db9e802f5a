package patinary.buyers;

import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/**
 * Every text of the shop that is long enough to say something about somebody, found by asking the database which there are: what
 * a later version adds is looked at too. The history is left to {@link KeptNames}. Names of her own lists are shorter, as are words of the program.
 */
@Repository
@Transactional
class LongTexts {

    private static final int LONG = 200;

    private static final String COLUMNS = """
            select lower(c.table_name) as table_name, lower(c.column_name) as column_name
            from information_schema.columns c
            join information_schema.tables t on t.table_schema = c.table_schema and t.table_name = c.table_name
            where lower(c.table_schema) = 'public' and t.table_type = 'BASE TABLE'
              and lower(c.data_type) = 'character varying' and c.character_maximum_length >= ?
              and lower(c.table_name) not in ('flyway_schema_history', 'history', 'person', 'shop', 'spring_session', 'spring_session_attributes')
            order by 1, 2""";

    private record Column(String tableName, String columnName) {}

    private final JdbcClient jdbc;

    LongTexts(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Writes something else wherever a name stands. */
    void replace(NameInText name, String by) {
        for (Column column : jdbc.sql(COLUMNS).param(LONG).query(Column.class).list()) {
            for (String text : texts(column)) {
                if (name.isIn(text)) {
                    jdbc.sql("update " + column.tableName() + " set " + column.columnName() + " = ? where "
                                    + column.columnName() + " = ?")
                            .params(shortened(name.replaced(text, by), text.length()), text)
                            .update();
                }
            }
        }
    }

    private List<String> texts(Column column) {
        return jdbc.sql("select distinct " + column.columnName() + " from " + column.tableName() + " where "
                        + column.columnName() + " <> ''")
                .query(String.class)
                .list();
    }

    /** The word may be longer than the name: a text that was full loses its end rather than keep the name. */
    private static String shortened(String text, int before) {
        int most = Math.max(before, LONG);
        return text.length() <= most ? text : text.substring(0, most);
    }
}
