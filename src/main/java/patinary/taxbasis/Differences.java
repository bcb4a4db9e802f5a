package patinary.taxbasis;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.ledger.Account;
import patinary.ledger.DocumentKind;
import patinary.money.Amount;

/**
 * Reads from the postings by how much tax and books may differ at the end of a year, for every reason. What was there on the
 * books' first day counts as there at the end of the year before.
 */
@Repository
class Differences {

    private record Unpaid(UUID id, String kind, LocalDate docDate, String text, long owed, long income, long tax) {}

    private record Bill(UUID id, String kind, LocalDate docDate, String text, long owed) {}

    private record BillLine(UUID id, String account, String category, long amount) {}

    private record Held(String account, String buyer, long amount) {}

    private record Lying(UUID id, String text, long amount) {}

    private record PieceRow(
            UUID documentId,
            String kind,
            String account,
            UUID pieceId,
            boolean fromSupply,
            long amountMinor,
            String text) {}

    /** A posting belongs to the time up to a day; the first day's belong to the time before their year. */
    private static final String UP_TO = "(%1$s.doc_date <= :last or %2$s and %1$s.doc_date <= :next)";

    private static final String FIRST_DAY = "d.kind = 'OPENING'";

    private static final String UNPAID = """
            select o.about_id as id, d.kind, d.doc_date, coalesce(s.buyer, '') as text, o.owed,
                   coalesce(t.income, 0) as income, coalesce(t.tax, 0) as tax
            from (select i.about_id, cast(sum(i.amount_minor) as bigint) as owed
                  from open_item i
                  where i.account = 'RECEIVABLE' and %s
                  group by i.about_id
                  having sum(i.amount_minor) <> 0) o
            join document d on d.id = o.about_id
            left join sale s on s.id = o.about_id
            left join (select p.document_id,
                              cast(-sum(case when p.account = 'SALES_TAX_DUE' then 0 else p.amount_minor end) as bigint) as income,
                              cast(-sum(case when p.account = 'SALES_TAX_DUE' then p.amount_minor else 0 end) as bigint) as tax
                       from posting p
                       where p.account in ('SALES', 'SHIPPING_CHARGED', 'OTHER_INCOME', 'SALES_TAX_DUE')
                       group by p.document_id) t on t.document_id = o.about_id
            order by d.doc_date, cast(o.about_id as varchar(36))""".formatted(UP_TO.formatted("i", "i.on_first_day"));

    private static final String BILLS = """
            select o.about_id as id, d.kind, d.doc_date, coalesce(b.name, s.buyer, '') as text, o.owed
            from (select i.about_id, cast(-sum(i.amount_minor) as bigint) as owed
                  from open_item i
                  where i.account = 'PAYABLE' and %s
                  group by i.about_id
                  having sum(i.amount_minor) <> 0) o
            join document d on d.id = o.about_id
            left join receipt r on r.id = o.about_id
            left join source b on b.id = r.source_id
            left join sale s on s.id = o.about_id
            order by d.doc_date, cast(o.about_id as varchar(36))""".formatted(UP_TO.formatted("i", "i.on_first_day"));

    /** A use that waited for its receipt moves on within it; what the receipt itself brought bears no origin. */
    private static final String BILL_LINES = """
            select p.document_id as id, p.account, coalesce(p.category, '') as category,
                   cast(sum(p.amount_minor) as bigint) as amount
            from posting p
            where p.document_id in (:ids) and p.origin_id is null
              and (p.account = 'EXPENSE' and p.supply_id is null
                   or p.account = 'BENCH' and p.quantity > 0
                   or p.account in ('MONEY', 'PAYABLE', 'STORE_CREDIT_HELD', 'OWNER_IN'))
            group by p.document_id, p.account, coalesce(p.category, '')""";

    private static final String HELD = """
            select h.account, h.buyer, cast(sum(h.amount_minor) as bigint) as amount
            from buyer_held h
            where %s
            group by h.account, h.buyer
            order by h.account, h.buyer""".formatted(UP_TO.formatted("h", "h.kind = 'OPENING'"));

    private static final String LYING = """
            select i.supply_id as id, coalesce(u.name, '') as text, i.amount
            from (select i.supply_id, cast(sum(i.amount_minor) as bigint) as amount
                  from open_item i
                  where i.account = 'BENCH' and %s
                  group by i.supply_id
                  having sum(i.amount_minor) <> 0) i
            left join supply u on u.id = i.supply_id
            order by u.name, cast(i.supply_id as varchar(36))""".formatted(UP_TO.formatted("i", "i.on_first_day"));

    private static final String PIECES = """
            select p.document_id, d.kind, p.account, p.piece_id,
                   case when p.supply_id is null then false else true end as from_supply, p.amount_minor,
                   c.code || ' ' || c.title as text
            from posting p
            join document d on d.id = p.document_id
            join piece c on c.id = p.piece_id
            where p.account in ('PIECES', 'COST_OF_PIECES', 'OWN_USE', 'WRITE_OFFS') and %s
            order by p.doc_date, d.kind_rank, cast(p.document_id as varchar(36)), p.line""".formatted(UP_TO.formatted("p", FIRST_DAY));

    private final JdbcClient jdbc;
    private final TaxYears years;

    Differences(JdbcClient jdbc, TaxYears years) {
        this.jdbc = jdbc;
        this.years = years;
    }

    /** Every difference at the end of a year, whichever way it is counted. */
    List<Difference> atEndOf(int year) {
        List<Difference> all = new ArrayList<>();
        for (Unpaid row : rows(UNPAID, year, Unpaid.class)) {
            Amount due = OpenBill.withoutTax(Amount.of(row.owed()), Amount.of(row.income()), Amount.of(row.tax()));
            Subject sale = Subject.document(row.kind(), row.id(), row.docDate(), row.text());
            all.add(new Difference(Reason.UNPAID_SALE, "", sale, due.negated()));
        }
        for (Held row : rows(HELD, year, Held.class)) {
            Reason reason = row.account().equals("CUSTOMER_DEPOSITS") ? Reason.PAID_AHEAD : Reason.CREDIT_GIVEN;
            all.add(new Difference(reason, "", Subject.buyer(row.buyer()), Amount.of(row.amount())));
        }
        all.addAll(bills(year));
        for (Lying row : rows(LYING, year, Lying.class)) {
            Subject supply = Subject.thing("SUPPLY", row.id(), row.text());
            all.add(new Difference(
                    Reason.BENCH, "", supply, Amount.of(row.amount()).negated()));
        }
        all.addAll(inPieces(year));
        return all;
    }

    private List<Difference> bills(int year) {
        List<Bill> open = rows(BILLS, year, Bill.class);
        Map<UUID, List<BillLine>> lines = lines(open.stream().map(Bill::id).toList());
        List<Difference> all = new ArrayList<>();
        for (Bill bill : open) {
            Subject subject = Subject.document(bill.kind(), bill.id(), bill.docDate(), bill.text());
            if (bill.kind().equals("SALE")) {
                all.add(new Difference(Reason.OWNERS_SHARE, "", subject, Amount.of(bill.owed())));
            } else if (bill.kind().equals("RECEIPT")) {
                all.addAll(parts(bill, subject, lines.getOrDefault(bill.id(), List.of())));
            }
        }
        return all;
    }

    private static List<Difference> parts(Bill bill, Subject subject, List<BillLine> lines) {
        Map<String, Amount> expenses = new HashMap<>();
        Amount supplies = Amount.ZERO;
        Amount total = Amount.ZERO;
        for (BillLine line : lines) {
            switch (line.account()) {
                case "EXPENSE" -> expenses.put(line.category(), Amount.of(line.amount()));
                case "BENCH" -> supplies = Amount.of(line.amount());
                default -> total = total.minus(Amount.of(line.amount()));
            }
        }
        OpenBill.Parts parts = new OpenBill(Amount.of(bill.owed()), total, expenses, supplies).parts();
        List<Difference> all = new ArrayList<>();
        parts.expenses()
                .forEach((category, amount) ->
                        all.add(new Difference(Reason.UNPAID_EXPENSE, category, subject, amount)));
        all.add(new Difference(Reason.UNPAID_SUPPLIES, "", subject, parts.supplies()));
        return all;
    }

    private Map<UUID, List<BillLine>> lines(List<UUID> receipts) {
        Map<UUID, List<BillLine>> byReceipt = new HashMap<>();
        if (!receipts.isEmpty()) {
            jdbc.sql(BILL_LINES)
                    .param("ids", receipts)
                    .query(BillLine.class)
                    .list()
                    .forEach(line -> byReceipt
                            .computeIfAbsent(line.id(), id -> new ArrayList<>())
                            .add(line));
        }
        return byReceipt;
    }

    private List<Difference> inPieces(int year) {
        Map<UUID, String> names = new HashMap<>();
        List<SuppliesInPieces.PiecePosting> postings = new ArrayList<>();
        for (PieceRow row : rows(PIECES, year, PieceRow.class)) {
            names.put(row.pieceId(), row.text());
            postings.add(new SuppliesInPieces.PiecePosting(
                    row.documentId(),
                    DocumentKind.valueOf(row.kind()),
                    Account.valueOf(row.account()),
                    row.pieceId(),
                    row.fromSupply(),
                    Amount.of(row.amountMinor())));
        }
        List<Difference> all = new ArrayList<>();
        SuppliesInPieces.of(postings)
                .forEach((piece, part) -> all.add(new Difference(
                        Reason.IN_PIECES,
                        "",
                        Subject.thing("PIECE", piece, names.getOrDefault(piece, "")),
                        part.negated())));
        return all;
    }

    private <T> List<T> rows(String sql, int year, Class<T> type) {
        return jdbc.sql(sql)
                .param("last", years.last(year))
                .param("next", years.last(year + 1))
                .query(type)
                .list();
    }
}
