package patinary.taxyear;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Account;
import patinary.ledger.Books;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.spending.ExpenseCategories;
import patinary.taxbasis.BasisBook;
import patinary.taxyear.TaxMapping.Goes;

/** What goes on which line of the form, year by year: as supplied, with what the owner changed. */
@Service
@Transactional(readOnly = true)
class LineBook {

    /** Lines whose amounts are reckoned, counted in miles, or asked for elsewhere: nothing is put on them. */
    private static final Set<String> NOT_TO_CHOOSE = Set.of(
            "net_receipts",
            "gross_profit",
            "gross_income",
            "total_expenses",
            "tentative_profit",
            "net_profit",
            "total_profit",
            "cost_of_goods_sold",
            "other_expenses_total",
            "business_use_of_home",
            "trading_allowance",
            "own_use");

    private static final Set<String> PARTS = Set.of("income", "expenses");

    private final TaxTables tables = TaxTables.load();
    private final ExpenseCategories categories = ExpenseCategories.load();
    private final YearBooks books;
    private final Books ledger;
    private final BasisBook basis;
    private final CurrentShop shop;
    private final JdbcClient jdbc;

    LineBook(YearBooks books, Books ledger, BasisBook basis, CurrentShop shop, JdbcClient jdbc) {
        this.books = books;
        this.ledger = ledger;
        this.basis = basis;
        this.shop = shop;
        this.jdbc = jdbc;
    }

    /** The shop's table as it holds in a year, or the plain one in years for which its form is not known. */
    TaxTable table(int year) {
        return all().over(supplied(year), year);
    }

    private TaxTable supplied(int year) {
        TaxTable own = tables.table(shop.taxTable(), year);
        return own.lines().isEmpty() ? tables.table(TaxTables.PLAIN, year) : own;
    }

    /** The lines that something can be put on. */
    List<TaxLine> lines(int year) {
        return table(year).lines().stream()
                .filter(line -> PARTS.contains(line.part()) && !NOT_TO_CHOOSE.contains(line.meaning()))
                .toList();
    }

    /** Every account and category that the table maps or the year has an amount on, by account. */
    List<LineChoice> choices(int year) {
        TaxTable supplied = supplied(year);
        TaxTable table = table(year);
        List<AccountSum> sums = books.parts(year).sums();
        Map<String, Amount> amounts = new TreeMap<>();
        table.map().keySet().forEach(key -> amounts.put(key, Amount.ZERO));
        for (AccountSum sum : sums) {
            boolean own = table.map().containsKey(sum.key()) || !sum.category().isEmpty();
            amounts.merge(own ? sum.key() : TaxTable.key(sum.account(), ""), sum.shown(), Amount::plus);
        }
        return amounts.entrySet().stream()
                .map(entry -> choice(entry.getKey(), entry.getValue(), supplied, table))
                .toList();
    }

    Optional<LineChoice> choice(int year, String account, String category) {
        return choices(year).stream()
                .filter(choice -> choice.key().equals(TaxTable.key(account, category)))
                .findFirst();
    }

    private LineChoice choice(String key, Amount amount, TaxTable supplied, TaxTable table) {
        String account = key.substring(0, key.indexOf('|'));
        String category = key.substring(key.indexOf('|') + 1);
        Optional<String> meaning = table.meaning(account, category);
        return new LineChoice(
                account,
                category,
                account.equals(Account.EXPENSE.name()) && !category.isEmpty() ? categories.name(category) : category,
                amount,
                meaning.flatMap(table::line).orElse(null),
                !meaning.equals(supplied.meaning(account, category)),
                isCost(account));
    }

    /** The cost of goods is reckoned from stock and purchases too; both must agree, so it stays where it is. */
    private static boolean isCost(String account) {
        return switch (Account.valueOf(account)) {
            case COST_OF_PIECES, COST_OF_RETAIL, WRITE_OFFS, FOUND_AT_COUNT -> true;
            default -> false;
        };
    }

    /** What was said for this very year. */
    Optional<TaxMapping> said(int year, String account, String category) {
        return all().rows().stream()
                .filter(row ->
                        row.taxYear() == year && row.isOf(supplied(year).name(), TaxTable.key(account, category)))
                .findFirst();
    }

    boolean sealed(int year) {
        return basis.sealed(year);
    }

    /**
     * Puts an account and category on another line, on none, or where it was supplied.
     *
     * @return whether it could be: a sealed year stays as it is
     */
    @Transactional
    boolean put(int year, LineChoice what, Goes goes, String meaning, boolean onward) {
        TaxMapping change =
                new TaxMapping(supplied(year).name(), year, what.account(), what.category(), goes, meaning, onward);
        return keep(year, all -> all.with(change));
    }

    /** Takes back what was said for this very year. */
    @Transactional
    boolean takeBack(int year, String account, String category) {
        String table = supplied(year).name();
        return keep(year, all -> all.takenBack(table, year, TaxTable.key(account, category)));
    }

    /** Everything as supplied, from this year on. */
    @Transactional
    boolean asSupplied(int year) {
        String table = supplied(year).name();
        return keep(year, all -> all.asSupplied(table, year));
    }

    private boolean keep(int year, UnaryOperator<TaxMappings> change) {
        ledger.settingsChange();
        if (sealed(year)) {
            return false;
        }
        TaxMappings changed = change.apply(all());
        jdbc.sql("delete from tax_mapping").update();
        for (TaxMapping row : changed.rows()) {
            jdbc.sql("insert into tax_mapping (tax_table, tax_year, account, category, goes, meaning, onward) "
                            + "values (?, ?, ?, ?, ?, ?, ?)")
                    .params(
                            row.taxTable(),
                            row.taxYear(),
                            row.account(),
                            row.category(),
                            row.goes().name(),
                            row.meaning(),
                            row.onward())
                    .update();
        }
        return true;
    }

    private TaxMappings all() {
        return new TaxMappings(
                jdbc.sql("select tax_table, tax_year, account, category, goes, meaning, onward from tax_mapping "
                                + "order by tax_table, tax_year, account, category")
                        .query(TaxMapping.class)
                        .list());
    }
}
