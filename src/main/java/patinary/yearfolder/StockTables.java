package patinary.yearfolder;

import static patinary.yearfolder.Column.amount;
import static patinary.yearfolder.Column.day;
import static patinary.yearfolder.Column.number;
import static patinary.yearfolder.Column.text;
import static patinary.yearfolder.Column.yes;

import org.springframework.stereotype.Component;

/** What was in stock when the year began and ended, how its value arose, and what was taken or came free. */
@Component
class StockTables {

    static final String AT_START = "stock-at-start";
    static final String AT_END = "stock";
    static final String HOW = "stock-how-it-arose";

    private static final String STOCK = """
            select account, coalesce(piece_code, '') as code, coalesce(piece_title, supply, '') as title,
                   case when account = 'PIECES' then null else sum(quantity) end as quantity,
                   cast(sum(amount_minor) as bigint) as cost
            from year_row
            where part = 'STOCK' and doc_date <= %s
            group by account, piece_id, case when account = 'PIECES' then null else supply_id end,
                     coalesce(piece_code, ''), coalesce(piece_title, supply, '')
            having sum(amount_minor) <> 0 or sum(quantity) <> 0
            order by account desc, code, title""";

    /**
     * Pieces: every document that put cost on them or took it off. Supplies: each lot that came, with what is left of it if the
     * oldest goes first, and in one row by kind of document what went.
     */
    private static final String ARISING = """
            with moved as (
                select p.account, case when p.account = 'PIECES' then p.piece_id else p.supply_id end as thing_id,
                       p.document_id, p.doc_date, d.kind, d.kind_rank,
                       sum(p.quantity) as quantity, cast(sum(p.amount_minor) as bigint) as amount_minor
                from posting p
                join document d on d.id = p.document_id
                where p.account in ('PIECES', 'BENCH', 'SHELF') and p.doc_date <= :last
                group by p.account, case when p.account = 'PIECES' then p.piece_id else p.supply_id end,
                         p.document_id, p.doc_date, d.kind, d.kind_rank
            ),
            ranked as (
                select m.*, case when m.account = 'PIECES' or m.quantity > 0 then true else false end as own_row,
                       sum(m.quantity) over (partition by m.account, m.thing_id) as there_quantity,
                       sum(m.amount_minor) over (partition by m.account, m.thing_id) as there_minor,
                       coalesce(sum(case when m.quantity > 0 then m.quantity else 0 end) over (
                           partition by m.account, m.thing_id
                           order by m.doc_date desc, m.kind_rank desc, cast(m.document_id as varchar(36)) desc
                           rows between unbounded preceding and 1 preceding), 0) as newer
                from moved m
            ),
            arose as (
                select account, thing_id, kind, case when own_row then doc_date end as doc_date,
                       case when own_row then document_id end as document_id,
                       case when account = 'PIECES' then null else sum(quantity) end as quantity,
                       sum(case when quantity > 0 then greatest(0, least(quantity, there_quantity - newer)) end)
                           as left_quantity,
                       cast(sum(amount_minor) as bigint) as amount_minor
                from ranked
                where (there_quantity <> 0 or there_minor <> 0) and (account <> 'PIECES' or amount_minor <> 0)
                group by account, thing_id, kind, case when own_row then doc_date end,
                         case when own_row then document_id end
            )
            select a.account, coalesce(pc.code, '') as code, coalesce(pc.title, su.name, '') as title, a.kind, a.doc_date,
                   a.document_id, coalesce(so.name, '') as source, a.quantity, a.left_quantity, a.amount_minor
            from arose a
            left join piece pc on a.account = 'PIECES' and pc.id = a.thing_id
            left join supply su on a.account <> 'PIECES' and su.id = a.thing_id
            left join receipt rc on rc.id = a.document_id
            left join source so on so.id = rc.source_id
            order by a.account desc, code, title, a.doc_date, a.kind, a.document_id""";

    private static final String TAKEN = """
            select doc_date, taking_id, supply_line, supply, dimension, quantity, own_use_tax, note, cost_minor
            from taking_cost
            where doc_date between :first and :last
            order by doc_date, cast(taking_id as varchar(36))""";

    private static final String FREE = """
            select d.doc_date, g.id, g.giver, s.name, g.value_minor, g.for_work,
                   coalesce((select cast(-sum(p.amount_minor) as bigint) from posting p
                             where p.document_id = g.id and p.account = 'OTHER_INCOME'), 0) as income_minor,
                   d.note
            from supply_gift g
            join document d on d.id = g.id
            join supply s on s.id = g.supply_id
            where d.doc_date between :first and :last
            order by d.doc_date, d.id""";

    private final YearQueries queries;

    StockTables(YearQueries queries) {
        this.queries = queries;
    }

    FolderTable atStart(int year) {
        return stock(AT_START, year, ":before");
    }

    FolderTable atEnd(int year) {
        return stock(AT_END, year, ":last");
    }

    private FolderTable stock(String name, int year, String day) {
        return queries.table(
                name,
                year,
                STOCK.formatted(day),
                text("account"),
                text("piece_code"),
                text("title"),
                number("quantity"),
                amount("cost"));
    }

    FolderTable how(int year) {
        return queries.table(
                HOW,
                year,
                ARISING,
                text("account"),
                text("piece_code"),
                text("title"),
                text("kind"),
                day("date"),
                text("document"),
                text("source"),
                number("quantity"),
                number("left_of_lot"),
                amount("cost"));
    }

    /** For the tax on own use, which the state's rules decide on: each taking at cost. */
    FolderTable taken(int year) {
        return queries.table(
                "taken-for-own-use",
                year,
                TAKEN,
                day("date"),
                text("document"),
                text("supply_line"),
                text("supply"),
                text("measured_by"),
                number("quantity"),
                yes("tax_on_own_use_may_be_owed"),
                text("note"),
                amount("cost"));
    }

    /** What came free, with what it would have cost; of that, only what was for work done is income. */
    FolderTable free(int year) {
        return queries.table(
                "received-free",
                year,
                FREE,
                day("date"),
                text("document"),
                text("from"),
                text("supply"),
                amount("value"),
                yes("for_work_done"),
                amount("income"),
                text("note"));
    }
}
