package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.testing.ShopTest;

/** A table or field that a migration adds must get its place in the archive, or be named here with the reason why not. */
@ShopTest
class ArchiveFieldsIT {

    /**
     * Derived rows and figures, the books' own lock, people's passwords, an accountant's links, signed-in state, the clocks on the bench, and
     * what speaks of this machine: where its backups are, how they went, and who does a job.
     */
    private static final String LEFT_OUT =
            "'document', 'posting', 'uncosted_use', 'strand_move', 'carried_forward', 'document_piece', 'document_sale', 'document_stock', 'document_profit', 'supply_stock', 'piece_stock', 'piece_line', 'sale_part', 'offer_state', "
                    + "'piece_state', 'piece_figures', 'figures_made', "
                    + "'touched_document', 'touched_sale', 'touched_offer', 'touched_piece', 'touched_supply', "
                    + "'books', 'person', 'accountant_link', 'way_in', 'sign_in_try', 'passkey', 'flyway_schema_history', "
                    + "'bench_timer', 'bench_timer_piece', 'bench_wait', "
                    + "'sales_draft', 'sales_draft_column', 'sales_draft_part', 'sales_draft_row', "
                    + "'job_lease', 'backup_plan', 'backup_run'";

    @Autowired
    private JdbcClient jdbc;

    @Test
    void nothingThatIsKeptIsLeftOut() {
        Set<String> kept = new TreeSet<>(
                jdbc.sql("""
                        select lower(c.table_name) || '.' || lower(c.column_name)
                        from information_schema.columns c
                        join information_schema.tables t on t.table_schema = c.table_schema
                            and t.table_name = c.table_name
                        where lower(c.table_schema) = 'public' and t.table_type = 'BASE TABLE'
                            and lower(c.table_name) not in (%s) and lower(c.table_name) not like 'spring\\_session%%' escape '\\'
                            and lower(c.column_name) not in ('version', 'created_at')
                        """.formatted(LEFT_OUT)).query(String.class).list());
        kept.remove("shop.id");
        // Which move a sealed posting came from is asked no more: nothing of a sealed day is derived by itself.
        kept.remove("sealed_posting.move_no");
        kept.remove("sealed_posting.meant_piece_id");

        Set<String> archived = new TreeSet<>();
        for (ArchiveTable table : ArchiveTables.ALL) {
            ArchiveSql.own(table).forEach(column -> archived.add(table.name() + "." + column.field()));
        }

        assertThat(archived).isEqualTo(kept);
    }
}
