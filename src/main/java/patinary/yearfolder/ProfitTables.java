package patinary.yearfolder;

import static patinary.yearfolder.Column.amount;
import static patinary.yearfolder.Column.day;
import static patinary.yearfolder.Column.number;
import static patinary.yearfolder.Column.text;
import static patinary.yearfolder.Column.yes;

import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import patinary.taxyear.TaxLine;
import patinary.taxyear.TaxTable;

/** What the year earned and spent, row by row, and the journal of all postings. */
@Component
class ProfitTables {

    static final String INCOME = "income";
    static final String EXPENSES = "expenses";
    static final String PURCHASES = "purchases-and-cost";
    static final String COST_BY_PIECE = "cost-of-goods-by-piece";
    static final String JOURNAL = "journal";

    private static final String TITLE = """
            case when r.piece_title is not null and r.supply is not null then r.piece_title || ' / ' || r.supply
                 else coalesce(r.piece_title, r.supply, '') end as title""";

    /** Income is positive and refunds negative; expenses are positive. */
    private static final String LINES = """
            select r.doc_date, r.document_id, r.kind, r.account, r.category, '' as tax_line, '' as meaning, r.piece_code, %s,
                   r.note, %s as amount
            from year_row r
            where r.doc_date between :first and :last and r.part = '%s'
            order by r.doc_date, r.document_id, r.line""";

    private static final String ONE_PURCHASE = """
            select %s as what, r.doc_date, r.document_id, r.kind, r.account, r.category, '' as meaning, r.piece_code, %s,
                   r.note, r.amount_minor, r.line
            from year_row r
            where r.doc_date between :first and :last and %s
            """;

    /**
     * A piece's landed cost by what brought it, and how much of that is this year's cost. In one pass over the postings of pieces: the embedded
     * database works out a sum that is joined to other rows again for each of them.
     */
    private static final String BY_PIECE = """
            select 'COST_OF_PIECES' as account, l.code, l.title,
                   cast(sum(case when l.kind in ('RECEIPT', 'OPENING', 'SUPPLIER_RETURN') then l.amount_minor else 0 end)
                        as bigint) as bought,
                   cast(sum(case when l.kind in ('BENCH_ENTRY', 'COUNT') then l.amount_minor else 0 end) as bigint) as supplies,
                   cast(sum(case when l.kind in ('RECEIPT', 'OPENING', 'SUPPLIER_RETURN', 'BENCH_ENTRY', 'COUNT') then 0
                                 else l.amount_minor end) as bigint) as other,
                   cast(sum(l.cost_minor - l.amount_minor) as bigint) as elsewhere,
                   cast(sum(l.cost_minor) as bigint) as cost
            from (select p.piece_id, pc.code, pc.title, d.kind, p.amount_minor,
                         case when p.account = 'COST_OF_PIECES' and p.doc_date between :first and :last then 1 else 0 end as counts,
                         case when p.account = 'COST_OF_PIECES' and p.doc_date between :first and :last then p.amount_minor
                              else 0 end as cost_minor
                  from posting p
                  join document d on d.id = p.document_id
                  join piece pc on pc.id = p.piece_id
                  where p.account in ('PIECES', 'COST_OF_PIECES') and p.doc_date <= :last) l
            group by l.piece_id, l.code, l.title
            having max(l.counts) = 1
            union all
            select r.account, coalesce(r.piece_code, ''), coalesce(r.piece_title, r.supply, ''), null, null, null, null,
                   cast(sum(r.amount_minor) as bigint)
            from year_row r
            where r.doc_date between :first and :last and r.part = 'COST'
              and (r.account <> 'COST_OF_PIECES' or r.piece_id is null)
            group by r.account, coalesce(r.piece_code, ''), coalesce(r.piece_title, r.supply, '')
            order by 1, 2, 3""";

    /** All columns of the journal; what it is measured by, too. */
    static final String POSTINGS = """
            select r.doc_date, r.kind, r.document_id, r.line, r.account, r.category, r.place, r.piece_code, %s, r.party,
                   r.origin_id, r.estimated, r.quantity, r.amount_minor as amount, r.note
            from year_row r
            where r.doc_date between :first and :last
            order by r.doc_date, r.document_id, r.line""".formatted(TITLE);

    private final YearQueries queries;

    ProfitTables(YearQueries queries) {
        this.queries = queries;
    }

    FolderTable income(int year, TaxTable table) {
        return lines(INCOME, year, table, "-r.amount_minor");
    }

    FolderTable expenses(int year, TaxTable table) {
        return lines(EXPENSES, year, table, "r.amount_minor");
    }

    private FolderTable lines(String name, int year, TaxTable table, String amount) {
        String part = name.equals(INCOME) ? "INCOME" : "EXPENSE";
        FolderTable rows = queries.table(
                name,
                year,
                LINES.formatted(TITLE, amount, part),
                day("date"),
                text("document"),
                text("kind"),
                text("account"),
                text("category"),
                text("tax_line"),
                text("meaning"),
                text("piece_code"),
                text("title"),
                text("note"),
                amount("amount"));
        int line = rows.at("tax_line");
        return with(
                rows,
                cells -> cells[line] =
                        table.line(mean(rows, cells, table)).map(TaxLine::line).orElse(""));
    }

    private static FolderTable with(FolderTable table, Consumer<@Nullable Object[]> more) {
        return new FolderTable(
                table.name(),
                table.columns(),
                to -> table.content().to(cells -> {
                    more.accept(cells);
                    to.row(cells);
                }));
    }

    /** Puts the meaning of the row's account and category into the row. */
    private static String mean(FolderTable rows, @Nullable Object[] cells, TaxTable table) {
        Object category = cells[rows.at("category")];
        String meaning = table.meaning(
                        String.valueOf(cells[rows.at("account")]), category == null ? "" : category.toString())
                .orElse("");
        cells[rows.at("meaning")] = meaning;
        return meaning;
    }

    /** Each word under "what" adds up to its own figure of the year's page. */
    FolderTable purchases(int year, TaxTable table) {
        String sql = String.join(
                        "union all ",
                        purchase("r.purchase", "r.purchase is not null"),
                        purchase("'COST'", "r.part = 'COST'"),
                        purchase("'OWN_USE'", "r.part = 'OWN_USE'"),
                        purchase("'PACKED'", "r.packed"))
                + "order by 1, 2, 3, 12";
        FolderTable rows = queries.table(
                PURCHASES,
                year,
                sql,
                text("what"),
                day("date"),
                text("document"),
                text("kind"),
                text("account"),
                text("category"),
                text("meaning"),
                text("piece_code"),
                text("title"),
                text("note"),
                amount("amount"));
        int what = rows.at("what");
        return with(rows, cells -> {
            if ("COST".equals(cells[what])) {
                mean(rows, cells, table);
            }
        });
    }

    private static String purchase(String what, String which) {
        return ONE_PURCHASE.formatted(what, TITLE, which);
    }

    FolderTable costByPiece(int year) {
        return queries.table(
                COST_BY_PIECE,
                year,
                BY_PIECE,
                text("account"),
                text("piece_code"),
                text("title"),
                amount("bought"),
                amount("supplies"),
                amount("other"),
                amount("in_other_years_or_in_stock"),
                amount("cost"));
    }

    FolderTable journal(int year) {
        return queries.table(
                JOURNAL,
                year,
                POSTINGS,
                day("date"),
                text("kind"),
                text("document"),
                number("line"),
                text("account"),
                text("category"),
                text("place"),
                text("piece_code"),
                text("title"),
                text("party"),
                text("origin"),
                yes("estimated"),
                number("quantity"),
                amount("amount"),
                text("note"));
    }
}
