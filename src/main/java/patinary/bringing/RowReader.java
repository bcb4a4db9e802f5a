package patinary.bringing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.ShopCurrency;

/** Reads one row by a mapping, and says of each cell what is wrong with it. Pure. */
final class RowReader {

    private static final BigDecimal LARGEST = BigDecimal.valueOf(10_000_000_000L);
    private static final BigDecimal MOST = BigDecimal.valueOf(100_000);
    private static final int TITLE = 200;

    private final Mapping mapping;
    private final ShopCurrency currency;
    private final Sheet.Row row;
    private final List<Fault> faults = new ArrayList<>();

    /** A row, what it says where nothing is wrong with it, and what is wrong. */
    record ReadRow(
            Sheet.Row row, String reference, @Nullable Sold sold, List<Fault> faults) {}

    private RowReader(Mapping mapping, ShopCurrency currency, Sheet.Row row) {
        this.mapping = mapping;
        this.currency = currency;
        this.row = row;
    }

    /** @param reference what the order is known by */
    static ReadRow read(Mapping mapping, ShopCurrency currency, Sheet.Row row, String reference, int width) {
        RowReader reader = new RowReader(mapping, currency, row);
        reader.checkCells(width);
        Sold sold = reader.sold(reference);
        return new ReadRow(row, reference, reader.faults.isEmpty() ? sold : null, List.copyOf(reader.faults));
    }

    private Sold sold(String reference) {
        if (reference.isEmpty()) {
            wrong(Meaning.ORDER, "no-order");
        }
        LocalDate date = date();
        BigDecimal quantity = quantity();
        Optional<Amount> each = amount(Meaning.PRICE);
        Optional<Amount> whole = amount(Meaning.LINE_TOTAL);
        Amount gross = whole.or(() -> each.map(price -> price.times(quantity, RoundingMode.HALF_UP)))
                .orElseGet(() -> missing());
        Amount discount = amount(Meaning.LINE_DISCOUNT).orElse(Amount.ZERO);
        if (discount.compareTo(gross) > 0) {
            wrong(Meaning.LINE_DISCOUNT, "discount");
        }
        String title = mapping.cell(row, Meaning.TITLE);
        return new Sold(
                row,
                reference,
                date,
                title.substring(0, Math.min(title.length(), TITLE)),
                mapping.cell(row, Meaning.CODE),
                quantity,
                gross,
                whole.isPresent() ? null : each.orElse(null),
                discount,
                ofOrder(),
                mapping.cell(row, Meaning.BUYER),
                mapping.cell(row, Meaning.TAX_PLACE));
    }

    /** A row with filled cells beyond the table, or without a cell that is asked for, was cut in the wrong place. */
    private void checkCells(int width) {
        boolean beyond =
                row.cells().size() > width && row.cells().stream().skip(width).anyMatch(cell -> !cell.isBlank());
        int last = mapping.columns().values().stream()
                .mapToInt(column -> column)
                .max()
                .orElse(0);
        if (beyond || row.cells().size() < width && row.cells().size() <= last) {
            wrong(null, "cells", row.cells().size(), width);
        }
    }

    private Amount missing() {
        boolean unreadable = faults.stream()
                .anyMatch(fault -> fault.column() == Meaning.PRICE || fault.column() == Meaning.LINE_TOTAL);
        if (!unreadable) {
            wrong(mapping.has(Meaning.PRICE) ? Meaning.PRICE : Meaning.LINE_TOTAL, "no-price");
        }
        return Amount.ZERO;
    }

    private @Nullable LocalDate date() {
        String text = mapping.cell(row, Meaning.DATE);
        DateForm form = mapping.dates();
        if (text.isEmpty() || form == null) {
            return null;
        }
        Optional<LocalDate> day = form.read(text);
        if (day.isEmpty()) {
            wrong(Meaning.DATE, "date", shown(text));
        }
        return day.orElse(null);
    }

    private BigDecimal quantity() {
        String text = mapping.cell(row, Meaning.QUANTITY);
        if (text.isEmpty()) {
            return BigDecimal.ONE;
        }
        Optional<BigDecimal> quantity = number(text).map(NumberForm.Read::value);
        if (quantity.filter(value -> value.signum() > 0 && value.compareTo(MOST) <= 0)
                .isEmpty()) {
            wrong(Meaning.QUANTITY, "quantity", shown(text));
            return BigDecimal.ONE;
        }
        return quantity.get();
    }

    private Map<Meaning, Amount> ofOrder() {
        Map<Meaning, Amount> amounts = new EnumMap<>(Meaning.class);
        for (Meaning meaning : Meaning.values()) {
            if (meaning.isOfOrder()) {
                amount(meaning).ifPresent(amount -> amounts.put(meaning, amount));
            }
        }
        return Map.copyOf(amounts);
    }

    /** An amount of zero or more; what is kept or taken off may be written with a minus. */
    private Optional<Amount> amount(Meaning meaning) {
        String text = mapping.cell(row, meaning);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<NumberForm.Read> read = number(text);
        if (read.isEmpty()) {
            wrong(meaning, "number", shown(text));
            return Optional.empty();
        }
        if (!isOwn(read.get().currency())) {
            wrong(meaning, "currency", shown(text), currency.code());
            return Optional.empty();
        }
        return exact(meaning, read.get().value(), text);
    }

    private Optional<Amount> exact(Meaning meaning, BigDecimal value, String text) {
        boolean reduces =
                meaning == Meaning.FEE || meaning == Meaning.LINE_DISCOUNT || meaning == Meaning.ORDER_DISCOUNT;
        BigDecimal amount = (reduces ? value.abs() : value).stripTrailingZeros();
        if (amount.signum() < 0) {
            wrong(meaning, "negative", shown(text));
        } else if (amount.scale() > currency.digits()) {
            wrong(meaning, "decimals", shown(text), currency.digits());
        } else if (amount.compareTo(LARGEST) > 0) {
            wrong(meaning, "too-large", shown(text));
        } else {
            return Optional.of(
                    Amount.of(amount.movePointRight(currency.digits()).longValueExact()));
        }
        return Optional.empty();
    }

    private Optional<NumberForm.Read> number(String text) {
        NumberForm form = mapping.numbers();
        return form == null ? Optional.empty() : form.read(text);
    }

    private boolean isOwn(String sign) {
        return sign.isEmpty() || currency.signs().stream().anyMatch(own -> own.equalsIgnoreCase(sign));
    }

    private void wrong(@Nullable Meaning column, String key, Object... arguments) {
        faults.add(Fault.of(row, column, key, arguments));
    }

    private static String shown(String text) {
        int longest = 60;
        return text.length() > longest ? text.substring(0, longest) : text;
    }
}
