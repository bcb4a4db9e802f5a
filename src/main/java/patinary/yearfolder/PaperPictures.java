package patinary.yearfolder;

import static patinary.yearfolder.Column.day;
import static patinary.yearfolder.Column.text;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.stereotype.Component;
import patinary.photos.PhotoFolder;

/** The photos of the year's papers, named by the day of their document and a number. */
@Component
class PaperPictures {

    /** Takes one picture; without a file where it is lost. */
    @FunctionalInterface
    interface Pictures {
        void picture(String name, Optional<Path> file);
    }

    private static final String NAME = "receipt-photos";

    private static final String SQL = """
            select d.doc_date, d.id, d.kind, coalesce(so.name, e.payee, '') as from_whom, d.note, p.sha256
            from photo p
            join document d on d.id = p.document_id
            left join receipt r on r.id = d.id
            left join source so on so.id = r.source_id
            left join expense e on e.id = d.id
            where d.doc_date between :first and :last and p.taken_away_at is null
            order by d.doc_date, cast(d.id as varchar(36)), p.sort_order, cast(p.id as varchar(36))""";

    private static final int HASH = 5;

    private final YearQueries queries;
    private final PhotoFolder folder;

    PaperPictures(YearQueries queries, PhotoFolder folder) {
        this.queries = queries;
        this.folder = folder;
    }

    /** Which photo shows which document; a lost picture is said. */
    FolderTable table(int year) {
        return new FolderTable(
                NAME,
                List.of(
                        text("file"),
                        day("date"),
                        text("document"),
                        text("kind"),
                        text("from"),
                        text("note"),
                        text("is_there")),
                rows -> numbered(
                        year,
                        (name, cells) -> rows.row(
                                name,
                                cells[0],
                                cells[1],
                                cells[2],
                                cells[3],
                                cells[4],
                                folder.full(String.valueOf(cells[HASH])).isPresent() ? "yes" : "lost")));
    }

    void each(int year, Pictures pictures) {
        numbered(year, (name, cells) -> pictures.picture(name, folder.full(String.valueOf(cells[HASH]))));
    }

    @FunctionalInterface
    private interface Named {
        void row(String name, Object[] cells);
    }

    private void numbered(int year, Named rows) {
        int[] number = {0};
        queries.table(
                        NAME,
                        year,
                        SQL,
                        day("date"),
                        text("document"),
                        text("kind"),
                        text("from"),
                        text("note"),
                        text("sha256"))
                .content()
                .to(cells -> rows.row(String.format(Locale.ROOT, "photos/%s-%04d.jpg", cells[0], ++number[0]), cells));
    }
}
