package patinary.buying;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.ShopCurrency;
import patinary.shop.CurrentShop;
import patinary.shop.MoneyPlaces;
import patinary.web.Fmt;

/** What the page for buying chooses from, what was used last standing first. */
@Repository
@Transactional(readOnly = true)
class BuyLists {

    private static final String WORDS = """
            select w.id, w.name from %1$s w
            left join (select p.%2$s as word_id, max(d.recorded_at) as used_at
                       from piece p join receipt_piece rp on rp.piece_id = p.id join document d on d.id = rp.receipt_id
                       group by p.%2$s) u on u.word_id = w.id
            order by case when u.used_at is null then 1 else 0 end, u.used_at desc, lower(w.name), w.id""";

    private static final String SOURCES = """
            select s.id, s.name, s.tax_percent, s.resale_certificate from source s
            left join (select r.source_id, max(d.recorded_at) as used_at
                       from receipt r join document d on d.id = r.id group by r.source_id) u on u.source_id = s.id
            order by case when u.used_at is null then 1 else 0 end, u.used_at desc, lower(s.name), s.id""";

    /** An answer of a list. */
    record Row(String value, String text) {}

    /**
     * @param tax what the till adds, as a number, or null
     * @param certificate whether it sells goods for sale without that tax
     */
    record SourceRow(String value, String text, @Nullable String tax, boolean certificate) {}

    /**
     * How amounts are read and shown.
     *
     * @param digits the decimals of the currency
     * @param signs what may stand before or after one that is typed
     */
    record Money(String code, int digits, List<String> signs) {}

    private final JdbcClient jdbc;
    private final QuickPercents percents;
    private final MoneyPlaces places;
    private final ReceiptChoices choices;
    private final CurrentShop shop;
    private final MessageSource messages;
    private final Fmt fmt;

    BuyLists(
            JdbcClient jdbc,
            QuickPercents percents,
            MoneyPlaces places,
            ReceiptChoices choices,
            CurrentShop shop,
            MessageSource messages,
            Fmt fmt) {
        this.jdbc = jdbc;
        this.percents = percents;
        this.places = places;
        this.choices = choices;
        this.shop = shop;
        this.messages = messages;
        this.fmt = fmt;
    }

    public List<Row> kinds() {
        return words("object_kind", "kind_id");
    }

    public List<Row> styles() {
        return words("style", "style_id");
    }

    public List<SourceRow> sources() {
        return jdbc.sql(SOURCES)
                .query((row, number) -> {
                    var tax = row.getBigDecimal("tax_percent");
                    return new SourceRow(
                            row.getObject("id", UUID.class).toString(),
                            row.getString("name"),
                            tax == null ? null : tax.stripTrailingZeros().toPlainString(),
                            !row.getString("resale_certificate").isBlank());
                })
                .list();
    }

    public List<Row> percents() {
        return percents.rows().stream()
                .map(row -> new Row(row.value(), said("buying.percents.row", fmt.percent(row.share()), row.name())))
                .toList();
    }

    public List<Row> paid() {
        String usual = choices.usual();
        return PaidWith.choices(places.findAllByOrderByName(), false).stream()
                .map(choice -> new Row(choice.value(), choice.message() ? said(choice.text()) : choice.text()))
                .sorted(java.util.Comparator.comparing(row -> !row.value().equals(usual)))
                .toList();
    }

    public Money money() {
        ShopCurrency currency = shop.currency();
        return new Money(currency.code(), currency.digits(), currency.signs());
    }

    private List<Row> words(String table, String column) {
        return jdbc.sql(WORDS.formatted(table, column))
                .query((row, number) -> new Row(row.getObject("id", UUID.class).toString(), row.getString("name")))
                .list();
    }

    private String said(String key, Object... details) {
        return messages.getMessage(key, details, LocaleContextHolder.getLocale());
    }
}
