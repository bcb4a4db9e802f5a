package patinary.second;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The demo shop by two roads: the packaged program's postings, and books reckoned from the archive alone. They agree to the cent. */
class SecondRoadIT {

    private static final Path ARCHIVE = Path.of("db/demo");

    @TempDir
    static Path folder;

    private static SecondBooks books;

    @BeforeAll
    static void goBothRoads() throws Exception {
        books = SecondBooks.of(ARCHIVE);
        RunningProgram.loadedWith(ARCHIVE, folder.resolve("shop")).copyPostingsInto(books);
    }

    @AfterAll
    static void close() throws SQLException {
        books.close();
    }

    @ParameterizedTest
    @EnumSource
    void agrees(Figure figure) throws SQLException {
        List<List<Object>> own = figure.own(books);

        assertThat(own).isNotEmpty();
        assertThat(figure.ofTheProgram(books)).containsExactlyElementsOf(own);
    }

    /** Where one receipt has two lines for the same supply or category, their sum is compared. */
    @Test
    void agreesOnTheLandedCostOfReceiptLines() throws SQLException {
        List<List<Object>> own = books.rows("""
                select l.receipt_id, l.kind, coalesce(r.supply_id, r.category, case l.kind when 'PIECES' then r.line end) as what,
                       sum(l.landed)
                from landing l join receipt_line r on r.receipt_id = l.receipt_id and cast(r.line as int) = l.line
                group by l.receipt_id, l.kind, what having sum(l.landed) <> 0 order by 1, 2, 3""");
        List<List<Object>> ofTheProgram = books.rows("""
                select p.doc,
                       case p.account when 'BENCH' then 'SUPPLY' when 'OWNER_OUT' then upper(p.category) else p.account end as kind,
                       coalesce(p.supply, case p.account when 'EXPENSE' then p.category end, r.line) as what, sum(p.amount)
                from posting p join receipt d on d.id = p.doc
                left join receipt_piece r on r.receipt_id = p.doc and r.piece_id = p.piece
                where p.account in ('PIECES', 'EXPENSE', 'OWNER_OUT') and p.supply is null
                   or p.account in ('BENCH', 'SHELF') and p.quantity > 0
                group by p.doc, kind, what having sum(p.amount) <> 0 order by 1, 2, 3""");

        assertThat(own).hasSizeGreaterThan(200);
        assertThat(ofTheProgram).containsExactlyElementsOf(own);
    }
}
