package patinary.durable;

import java.util.ArrayList;
import java.util.List;
import org.postgresql.PGConnection;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;

/**
 * Takes the foreign keys and the indexes of an empty table away on PostgreSQL until it is filled, within the transaction that fills it:
 * nobody else ever sees the table without them, and where the transaction ends half-way they were never gone. What may not repeat is
 * looked at row by row all the same. The embedded database would end the transaction at the first of these statements.
 */
final class KeysAside {

    /** Only the owner of a table may do this; for anybody else nothing is set aside. */
    private static final String ASIDE = """
            select 'alter table ' || c.conrelid::regclass || ' drop constraint ' || quote_ident(c.conname) as away,
                   'alter table ' || c.conrelid::regclass || ' add constraint ' || quote_ident(c.conname) || ' '
                       || pg_get_constraintdef(c.oid) as back,
                   2 as turn
            from pg_constraint c
            join pg_class t on t.oid = c.conrelid and pg_has_role(t.relowner, 'USAGE')
            where c.conrelid = cast(? as regclass) and c.contype = 'f'
            union all
            select 'drop index ' || i.indexrelid::regclass, pg_get_indexdef(i.indexrelid), 1
            from pg_index i
            join pg_class t on t.oid = i.indrelid and pg_has_role(t.relowner, 'USAGE')
            where i.indrelid = cast(? as regclass) and not i.indisunique
            order by turn, back""";

    private KeysAside() {}

    /** @return the statements that bring back what was taken away; none where the table has rows, or on the embedded database */
    static List<String> ofEmpty(JdbcTemplate jdbc, String table) {
        boolean able = Boolean.TRUE.equals(
                jdbc.execute((ConnectionCallback<Boolean>) connection -> connection.isWrapperFor(PGConnection.class)));
        if (!able
                || !jdbc.queryForList("select 1 from " + table + " fetch first 1 row only")
                        .isEmpty()) {
            return List.of();
        }
        List<String> away = new ArrayList<>();
        List<String> back = new ArrayList<>();
        jdbc.query(
                ASIDE,
                row -> {
                    away.add(row.getString("away"));
                    back.add(row.getString("back"));
                },
                table,
                table);
        away.forEach(jdbc::execute);
        return back;
    }
}
