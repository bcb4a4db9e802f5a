package patinary.history;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import patinary.exchange.CellValue;
import patinary.exchange.Content;
import patinary.exchange.KeptRows;
import patinary.ledger.DocumentKind;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.Fmt;
import patinary.web.Ids;
import patinary.web.Tongue;

/** Says cells of kept rows in words: amounts, days and quantities as everywhere else, ids by the name of what they stand for. */
@Component
class HistoryWords {

    private static final Set<String> QUANTITIES = Set.of("quantity", "content", "step_quantity", "low_quantity");

    /** A country is kept by its two letters. */
    private static final String COUNTRY = "country";

    /** What tells a subject from its like, the most telling first. */
    private static final List<String> TELLING = List.of(
            "code",
            "title",
            "name",
            "buyer",
            "payee",
            "payer",
            "giver",
            "destination",
            "piece_id",
            "supply_id",
            "source_id",
            "channel_id",
            "category",
            "order_reference",
            "tax_year");

    private final CurrentShop shop;
    private final Names names;
    private final Changes changes;
    private final Fmt fmt;
    private final MessageSource messages;

    HistoryWords(CurrentShop shop, Names names, Changes changes, Fmt fmt, MessageSource messages) {
        this.shop = shop;
        this.names = names;
        this.changes = changes;
        this.fmt = fmt;
        this.messages = messages;
    }

    /** How a kind of document or thing is called; the word of the archive where this program does not know it. */
    String kind(String table) {
        return message("history.kind." + table, table);
    }

    /** How a table of lines is called. */
    String rows(String table) {
        return message("history.rows." + table, kind(table));
    }

    String field(String table, String column) {
        return message("history.field." + table + "." + column, message("history.field." + column, column));
    }

    /** The kind and day of a document, the kind of another thing, and what tells it from its like. */
    String title(Subject subject, Content content, Called ids) {
        String day = content.cell(subject.kind(), "date");
        String called = day.isEmpty()
                ? kind(subject.kind())
                : message("history.of-day", "{0}", kind(subject.kind()), fmt.date(LocalDate.parse(day)));
        return content.rows(subject.kind()).stream()
                .findFirst()
                .flatMap(row -> TELLING.stream()
                        .filter(row::containsKey)
                        .findFirst()
                        .map(column -> called + ": " + cell(subject.kind(), column, row.get(column), row, ids)))
                .orElse(called);
    }

    /** What tells a line from the others of its document; without a letter where nothing does. */
    String line(String table, Map<String, String> row, Called ids) {
        return TELLING.stream()
                .filter(row::containsKey)
                .findFirst()
                .map(column -> cell(table, column, row.get(column), row, ids))
                .orElse("");
    }

    /**
     * A cell in words.
     *
     * @param row the row that it is a cell of
     * @param ids what the ids in it stand for
     */
    String cell(String table, String column, String text, Map<String, String> row, Called ids) {
        if (text.isEmpty()) {
            return message("history.empty", "–");
        }
        return CellValue.of(shop.currency(), table, column, text)
                .map(cell -> say(table, column, cell, row, ids))
                .orElse(text);
    }

    private String say(String table, String column, CellValue cell, Map<String, String> row, Called ids) {
        Object value = cell.value();
        if (value instanceof Amount amount) {
            return fmt.money(amount);
        } else if (value instanceof LocalDate date) {
            return fmt.date(date);
        } else if (value instanceof Instant instant) {
            return fmt.moment(instant);
        } else if (value instanceof Boolean yes) {
            return message(yes ? "history.yes" : "history.no", "");
        } else if (value instanceof BigDecimal number) {
            return cell.form() == CellValue.Form.PERCENT
                    ? fmt.percent(number)
                    : quantity(table, column, number, row, ids);
        } else if (value instanceof UUID id) {
            return named(id, cell.references(), ids);
        }
        if (column.equals(COUNTRY)) {
            return Tongue.ENGLISH.in(value.toString()).getDisplayCountry(LocaleContextHolder.getLocale());
        }
        return cell.form() == CellValue.Form.WORD
                ? message(
                        "history.word." + value,
                        value.toString().toLowerCase(Locale.ROOT).replace('_', ' '))
                : value.toString();
    }

    private String quantity(String table, String column, BigDecimal number, Map<String, String> row, Called ids) {
        if (!QUANTITIES.contains(column)) {
            return fmt.number(number);
        }
        String dimension = table.equals("supply")
                ? row.getOrDefault("dimension", "")
                : Ids.read(row.getOrDefault("supply_id", ""))
                        .flatMap(ids::dimension)
                        .orElse("");
        String unit = message("history.unit." + dimension, "");
        return unit.isEmpty() ? fmt.number(number) : fmt.quantity(number, unit);
    }

    private String named(UUID id, List<String> tables, Called ids) {
        return ids.name(id)
                .or(() -> ids.document(id)
                        .map(document -> message(
                                "history.of-day",
                                "{0}",
                                kind(KeptRows.table(DocumentKind.valueOf(document.kind()))),
                                fmt.date(document.day()))))
                .orElseGet(() -> gone(id, tables));
    }

    /** What is there no more is called as it was last. */
    private String gone(UUID id, List<String> tables) {
        return tables.stream()
                .flatMap(table -> changes.of(new Subject(table, id), 1).stream())
                .findFirst()
                .map(change ->
                        title(new Subject(change.kind(), id), change.latest(), names.in(List.of(change.latest()))))
                .orElseGet(() -> message("history.gone", ""));
    }

    String message(String key, String otherwise, Object... arguments) {
        String text = messages.getMessage(key, arguments, otherwise, LocaleContextHolder.getLocale());
        return text == null ? otherwise : text;
    }
}
