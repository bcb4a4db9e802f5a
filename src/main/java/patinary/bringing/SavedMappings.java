package patinary.bringing;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Mappings she saved under names of her own. */
@Repository
@Transactional
class SavedMappings {

    static final int NAME = 80;

    /** A mapping in the list. */
    record Row(UUID id, String name, String channel) {}

    /** A saved mapping. */
    record Saved(UUID id, String name, Mapping mapping) {}

    private final JdbcClient jdbc;
    private final MappingRows rows;

    SavedMappings(JdbcClient jdbc, MappingRows rows) {
        this.jdbc = jdbc;
        this.rows = rows;
    }

    @Transactional(readOnly = true)
    public List<Row> all() {
        return jdbc.sql("""
                        select m.id, m.name, c.name as channel
                        from sales_mapping m
                        join channel c on c.id = m.channel_id
                        order by lower(m.name), m.id""").query(Row.class).list();
    }

    /** The mapping saved last by name for files with this header row. */
    @Transactional(readOnly = true)
    public Optional<Saved> forHeader(String key) {
        return key.isEmpty()
                ? Optional.empty()
                : jdbc
                        .sql("select * from sales_mapping where header_key = ? order by lower(name), id")
                        .param(key)
                        .query((row, number) -> saved(row))
                        .list()
                        .stream()
                        .findFirst();
    }

    @Transactional(readOnly = true)
    public Optional<Saved> find(UUID id) {
        return jdbc.sql("select * from sales_mapping where id = ?")
                .param(id)
                .query((row, number) -> saved(row))
                .optional();
    }

    /** Saves under a name; what was saved under it before is replaced. */
    public void save(String name, String headerKey, Mapping mapping) {
        jdbc.sql("delete from sales_mapping where lower(name) = lower(?)")
                .param(name)
                .update();
        rows.insert("sales_mapping", "name, header_key", UUID.randomUUID(), mapping, List.of(name, headerKey));
    }

    public void remove(UUID id) {
        jdbc.sql("delete from sales_mapping where id = ?").param(id).update();
    }

    private Saved saved(ResultSet row) throws SQLException {
        UUID id = row.getObject("id", UUID.class);
        return new Saved(id, row.getString("name"), MappingRows.read(row, rows.columns("mapping", id)));
    }
}
