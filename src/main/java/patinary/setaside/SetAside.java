package patinary.setaside;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.shop.CurrentShop;
import patinary.taxyear.ProfitSoFar;

/** Reckons the estimate of a year, payment by payment. */
@Service
@Transactional(readOnly = true)
class SetAside {

    private static final Map<String, String> OFFICES = Map.of("us-schedule-c", "US");

    private final PaymentTables tables = PaymentTables.load();
    private final SetAsideBook book;
    private final ProfitSoFar profits;
    private final CurrentShop shop;

    SetAside(SetAsideBook book, ProfitSoFar profits, CurrentShop shop) {
        this.book = book;
        this.profits = profits;
        this.shop = shop;
    }

    /** One estimate for each payment; none where the year's payments or constants are not known. */
    List<Estimate> year(int year) {
        Optional<Contributions> contributions =
                tables.contributions(office(), year, shop.currency().digits());
        Estimate.Percentages own = percentages(year);
        List<TaxPayment> paid = book.paid(year);
        if (contributions.isEmpty()) {
            return List.of();
        }
        List<Instalment> instalments = tables.instalments(office(), year);
        Map<LocalDate, Amount> profit = profits.upTo(
                year, instalments.stream().map(Instalment::periodTo).toList());
        return instalments.stream()
                .map(one -> Estimate.of(
                        one,
                        Objects.requireNonNull(profit.get(one.periodTo())),
                        contributions.get(),
                        own,
                        paidBy(paid, one.due())))
                .toList();
    }

    List<PaymentTables.Source> sources(int year) {
        return tables.sources(office(), year);
    }

    private Estimate.Percentages percentages(int year) {
        return book.own(year)
                .map(own -> new Estimate.Percentages(own.incomePercent(), own.statePercent()))
                .orElse(new Estimate.Percentages(Percent.ZERO, Percent.ZERO));
    }

    private static Amount paidBy(List<TaxPayment> paid, LocalDate day) {
        return paid.stream()
                .filter(one -> !one.paidOn().isAfter(day))
                .map(one -> Amount.of(one.amountMinor()))
                .collect(Amount.sum());
    }

    private String office() {
        return OFFICES.getOrDefault(shop.taxTable(), "");
    }
}
