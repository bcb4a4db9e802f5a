package patinary.taxyear;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.homeuse.HomeUse;
import patinary.homeuse.HomeUses;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.taxbasis.Adjustment;
import patinary.taxbasis.Adjustments;
import patinary.taxbasis.BasisBook;
import patinary.taxbasis.Reason;

/** Sorts a year onto the shop's tax table. */
@Service
@Transactional(readOnly = true)
public class Years {

    private final LineBook lines;
    private final YearBooks books;
    private final BasisBook basis;
    private final HomeUses homes;
    private final CurrentShop shop;

    Years(LineBook lines, YearBooks books, BasisBook basis, HomeUses homes, CurrentShop shop) {
        this.lines = lines;
        this.books = books;
        this.basis = basis;
        this.homes = homes;
        this.shop = shop;
    }

    public YearPage page(int year) {
        TaxTable table = table(year);
        Adjustments adjustments = basis.year(year);
        YearParts parts = books.parts(year);
        CostOfGoods goods = goods(parts, year, adjustments);
        YearSums sums = YearSums.of(table, AccountSum.withAdjustments(parts.sums(), adjustments), goods, home(year));
        return YearPage.of(table, shop.taxTable(), sums, goods, adjustments);
    }

    /** The amounts of the lines in whole units, by meaning. */
    Map<String, Amount> whole(int year) {
        Adjustments adjustments = basis.year(year);
        YearParts parts = books.parts(year);
        return YearSums.whole(
                table(year),
                AccountSum.withAdjustments(parts.sums(), adjustments),
                goods(parts, year, adjustments),
                home(year),
                shop.currency().digits());
    }

    private CostOfGoods goods(YearParts parts, int year, Adjustments adjustments) {
        return parts.goods(books.stockBefore(year)).adjusted(adjustments);
    }

    private @Nullable HomeUse home(int year) {
        return homes.of(year).orElse(null);
    }

    /** What tax counts otherwise than the books on one line. */
    List<Adjustment> adjustments(int year, String meaning) {
        String mapped = mapped(meaning);
        TaxTable table = table(year);
        return basis.year(year).rows().stream()
                .filter(row -> !row.profit().isZero())
                .filter(row -> switch (meaning) {
                    case "cogs_purchases" -> row.reason() == Reason.OWNERS_SHARE;
                    case "cogs_materials" -> row.reason() == Reason.UNPAID_SUPPLIES;
                    default ->
                        table.meaning(row.reason().result().name(), row.category())
                                .filter(mapped::equals)
                                .isPresent();
                })
                .toList();
    }

    /** What tax counts otherwise than the books on no line. */
    List<Adjustment> unmappedAdjustments(int year) {
        TaxTable table = table(year);
        return basis.year(year).rows().stream()
                .filter(row -> !row.profit().isZero())
                .filter(row -> table.meaning(row.reason().result().name(), row.category())
                        .flatMap(table::line)
                        .isEmpty())
                .toList();
    }

    private static String mapped(String meaning) {
        return meaning.equals("other_expenses_total") ? "other_expenses" : meaning;
    }

    /** The shop's table, or the plain one in years for which its form is not known. */
    public TaxTable table(int year) {
        return lines.table(year);
    }

    /** The documents behind a line; empty where the line has none of its own. */
    List<YearBooks.Row> rows(int year, String meaning) {
        if (meaning.equals("cogs_purchases") || meaning.equals("cogs_materials")) {
            return books.purchases(year, meaning.equals("cogs_materials"));
        }
        String mapped = mapped(meaning);
        TaxTable table = table(year);
        return books.rowsOf(
                year,
                books.parts(year).sums().stream()
                        .filter(sum -> table.meaning(sum.account(), sum.category())
                                .filter(mapped::equals)
                                .isPresent())
                        .map(AccountSum::key)
                        .toList());
    }

    /** The documents behind what is on no line. */
    List<YearBooks.Row> unmappedRows(int year) {
        return books.rowsOf(
                year, page(year).unmapped().stream().map(AccountSum::key).toList());
    }

    Optional<TaxLine> line(int year, String meaning) {
        return table(year).line(meaning);
    }
}
