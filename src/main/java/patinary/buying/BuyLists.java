package patinary.buying;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
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

    /** All of it at once, for the page. */
    record Offered(
            List<Row> kinds,
            List<Row> styles,
            List<SourceRow> sources,
            List<Row> percents,
            List<Row> paid,
            @Nullable Money money) {

        /** For somebody who is not signed in: nothing of the shop. */
        static final Offered NOTHING = new Offered(List.of(), List.of(), List.of(), List.of(), List.of(), null);
    }

    private final JdbcClient jdbc;
    private final LastBought bought;
    private final QuickPercents percents;
    private final MoneyPlaces places;
    private final ReceiptChoices choices;
    private final CurrentShop shop;
    private final MessageSource messages;
    private final Fmt fmt;

    BuyLists(
            JdbcClient jdbc,
            LastBought bought,
            QuickPercents percents,
            MoneyPlaces places,
            ReceiptChoices choices,
            CurrentShop shop,
            MessageSource messages,
            Fmt fmt) {
        this.jdbc = jdbc;
        this.bought = bought;
        this.percents = percents;
        this.places = places;
        this.choices = choices;
        this.shop = shop;
        this.messages = messages;
        this.fmt = fmt;
    }

    public Offered offered() {
        LastBought.Used used = bought.read();
        return new Offered(kinds(used), styles(used), sources(used), percents(), paid(), money());
    }

    public List<Row> kinds() {
        return kinds(bought.read());
    }

    public List<Row> styles() {
        return styles(bought.read());
    }

    public List<SourceRow> sources() {
        return sources(bought.read());
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
                .sorted(Comparator.comparing(row -> !row.value().equals(usual)))
                .toList();
    }

    public Money money() {
        ShopCurrency currency = shop.currency();
        return new Money(currency.code(), currency.digits(), currency.signs());
    }

    private List<Row> kinds(LastBought.Used used) {
        return words("object_kind", used.kinds());
    }

    private List<Row> styles(LastBought.Used used) {
        return words("style", used.styles());
    }

    private List<Row> words(String table, Map<UUID, Instant> used) {
        record Word(UUID id, String name) {}
        return jdbc.sql("select id, name from " + table + " order by lower(name), id").query(Word.class).list().stream()
                .sorted(Comparator.comparing(Word::id, LastBought.Used.lastFirst(used)))
                .map(word -> new Row(word.id().toString(), word.name()))
                .toList();
    }

    private List<SourceRow> sources(LastBought.Used used) {
        record Known(UUID id, String name, @Nullable BigDecimal taxPercent, String resaleCertificate) {}
        return jdbc
                .sql("select id, name, tax_percent, resale_certificate from source order by lower(name), id")
                .query(Known.class)
                .list()
                .stream()
                .sorted(Comparator.comparing(Known::id, LastBought.Used.lastFirst(used.sources())))
                .map(source -> new SourceRow(
                        source.id().toString(),
                        source.name(),
                        source.taxPercent() == null
                                ? null
                                : source.taxPercent().stripTrailingZeros().toPlainString(),
                        !source.resaleCertificate().isBlank()))
                .toList();
    }

    private String said(String key, Object... details) {
        return messages.getMessage(key, details, LocaleContextHolder.getLocale());
    }
}
