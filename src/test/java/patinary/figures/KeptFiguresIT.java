package patinary.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.ledger.Check;
import patinary.ledger.Finding;
import patinary.pieces.NewPieces;
import patinary.testing.ShopTest;

/** What is kept follows the definitions, and check tells where it does not. */
@ShopTest
class KeptFiguresIT {

    /** Tables that refer to a piece but belong to no document: what she notes of it, and what is kept of it. */
    private static final Set<String> NO_DOCUMENTS = Set.of(
            "piece_tag",
            "piece_owner",
            "piece_size",
            "photo",
            "packing_piece",
            "bench_timer_piece",
            "piece_state",
            "piece_figures");

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private NewPieces pieces;

    @Autowired
    private Check check;

    @Autowired
    private FiguresAtStart start;

    @Autowired
    private TransactionTemplate transaction;

    @Test
    void everyTableInWhichADocumentNamesAPieceIsLookedThrough() {
        Set<String> naming = new TreeSet<>(jdbc.sql("""
                        select distinct lower(k.table_name)
                        from information_schema.referential_constraints r
                        join information_schema.table_constraints p on p.constraint_name = r.unique_constraint_name
                            and p.constraint_schema = r.unique_constraint_schema
                        join information_schema.key_column_usage k on k.constraint_name = r.constraint_name
                            and k.constraint_schema = r.constraint_schema
                        where lower(p.table_name) = 'piece' and lower(r.constraint_schema) = 'public'""").query(String.class).list());
        String view = jdbc.sql("""
                        select lower(view_definition) from information_schema.views
                        where lower(table_name) = 'document_piece_anew' and lower(table_schema) = 'public'""").query(String.class).single();

        naming.removeAll(NO_DOCUMENTS);
        assertThat(naming)
                .isNotEmpty()
                .allSatisfy(table -> assertThat(view)
                        .as("document_piece_anew reads %s", table)
                        .containsPattern("\\b" + table + "\\b"));
    }

    @Test
    void aDefinitionHasTheColumnsOfItsTableInTheirOrder() {
        for (KeptFigure figure : KeptFigure.values()) {
            assertThat(columns(figure.definition())).as(figure.table()).isEqualTo(columns(figure.table()));
        }
    }

    @Test
    void checkTellsOfAFigureThatIsNotWhatTheBooksGive() {
        UUID piece = transaction.execute(status -> pieces.create("An invented tray", null, null));
        assertThat(check.run()).isEmpty();

        jdbc.sql("update piece_figures set cost_minor = 100 where piece_id = ?")
                .param(piece)
                .update();
        assertThat(check.run())
                .extracting(Finding::what, Finding::subject)
                .hasSize(2)
                .containsOnly(org.assertj.core.groups.Tuple.tuple(Finding.What.KEPT_FIGURE, "piece_figures"));
        jdbc.sql("delete from piece_figures").update();
        assertThat(check.run()).hasSize(1);
    }

    @Test
    void figuresMadeByOtherDefinitionsAreMadeAnewAtTheStart() {
        UUID piece = transaction.execute(status -> pieces.create("An invented tray", null, null));
        jdbc.sql("delete from piece_state where piece_id = ?").param(piece).update();
        start.afterSingletonsInstantiated();
        assertThat(check.run()).as("nothing is made anew without a reason").isNotEmpty();

        jdbc.sql("update figures_made set views = views + 1").update();
        start.afterSingletonsInstantiated();
        assertThat(check.run()).isEmpty();
    }

    private List<String> columns(String table) {
        return jdbc.sql("""
                        select lower(column_name) from information_schema.columns
                        where lower(table_name) = ? and lower(table_schema) = 'public'
                        order by ordinal_position""").param(table).query(String.class).list();
    }
}
