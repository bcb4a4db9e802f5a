package patinary.yearfolder;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.util.function.SingletonSupplier;
import patinary.homeuse.HomeUses;
import patinary.taxyear.TaxTable;
import patinary.taxyear.YearPage;
import patinary.taxyear.Years;

/** All tables of a year, in the order of the folder. */
@Component
class YearTables {

    /**
     * A year as the folder shows it. What the page of the year has is worked out when it is first asked for: a journal alone does
     * without it.
     *
     * @param tables the tables in their order, the summary by lines first
     */
    record Year(
            int year,
            LocalDate first,
            LocalDate last,
            Supplier<YearPage> lazyPage,
            TaxTable form,
            Reckoning reckoning,
            Supplier<YearQueries.Estimates> lazyEstimates,
            List<FolderTable> tables) {

        YearPage page() {
            return lazyPage.get();
        }

        YearQueries.Estimates estimates() {
            return lazyEstimates.get();
        }
    }

    /** The names of all tables. */
    static final List<String> NAMES = List.of(
            "lines",
            "on-no-line",
            "mapping",
            "tax-adjustments",
            "income",
            "purchases-and-cost",
            "cost-of-goods-by-piece",
            "expenses",
            "stock-at-start",
            "stock",
            "stock-how-it-arose",
            "taken-for-own-use",
            "received-free",
            "trips",
            HomeTable.NAME,
            "sales-tax",
            "payouts",
            "processor-balances",
            "reported-gross",
            "receipt-photos",
            "journal");

    private final Years years;
    private final YearQueries queries;
    private final ProfitTables profit;
    private final StockTables stock;
    private final MoneyTables money;
    private final PaperPictures papers;
    private final HomeUses home;

    YearTables(
            Years years,
            YearQueries queries,
            ProfitTables profit,
            StockTables stock,
            MoneyTables money,
            PaperPictures papers,
            HomeUses home) {
        this.years = years;
        this.queries = queries;
        this.profit = profit;
        this.stock = stock;
        this.money = money;
        this.papers = papers;
        this.home = home;
    }

    Year of(int year) {
        Supplier<YearPage> page = SingletonSupplier.of(() -> years.page(year));
        TaxTable form = years.table(year);
        Reckoning reckoning = Reckoning.of(form);
        List<FolderTable> tables = Stream.of(
                        LineTables.lines(page, reckoning, () -> queries.miles(year)),
                        LineTables.onNoLine(page),
                        LineTables.mapping(form),
                        LineTables.adjustments(page, form),
                        profit.income(year, form),
                        profit.purchases(year, form),
                        profit.costByPiece(year),
                        profit.expenses(year, form),
                        stock.atStart(year),
                        stock.atEnd(year),
                        stock.how(year),
                        stock.taken(year),
                        stock.free(year),
                        money.trips(year),
                        HomeTable.of(home, year, form),
                        money.salesTax(year),
                        money.payouts(year),
                        money.balances(year),
                        money.reportedGross(year),
                        papers.table(year),
                        profit.journal(year))
                .toList();
        return new Year(
                year,
                queries.first(year),
                queries.last(year),
                page,
                form,
                reckoning,
                SingletonSupplier.of(() -> queries.estimates(year)),
                tables);
    }
}
