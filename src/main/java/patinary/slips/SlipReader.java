package patinary.slips;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Turns the lines of one slip into suggestions. The order of lines counts: what follows the total is payment. */
final class SlipReader {

    private static final int WORDS = Pattern.CASE_INSENSITIVE;
    private static final Pattern SUBTOTAL = Pattern.compile("\\b(sub ?-?total|zwischensumme|sous-total)\\b", WORDS);
    private static final Pattern TOTAL =
            Pattern.compile("^\\W*(grand )?(total|amount due|balance due|to pay|summe|gesamt|betrag)\\b", WORDS);
    private static final Pattern TAX = Pattern.compile("\\b(sales tax|tax|vat|mwst|ust|tva|btw)\\b", WORDS);
    private static final Pattern DISCOUNT =
            Pattern.compile("\\b(discount|coupon|off|rabatt|you save|reduction|markdown)\\b", WORDS);
    private static final Pattern PAYMENT =
            Pattern.compile("\\b(cash|change|card|tendered|credit|debit|paid|bar|gegeben)\\b", WORDS);
    private static final Pattern QUANTITY_FIRST = Pattern.compile("^(\\d{1,3})\\s?[xX*@\\u00d7]\\s?(.*)$");
    private static final Pattern QUANTITY_LAST =
            Pattern.compile("^(.*?)\\s?(?<!\\S)(\\d{1,3})\\s?[xX*@\\u00d7]\\s?[$\\u20ac]?\\s?(\\d{1,6}[.,]\\d{2})$");

    private String shop = "";
    private List<LocalDate> dates = List.of();
    private final List<Slip.Item> items = new ArrayList<>();
    private String waiting = "";
    private @Nullable Long subtotal;
    private @Nullable Long tax;
    private @Nullable Long discount;
    private @Nullable Long total;

    static Slip read(List<SlipLine> lines) {
        SlipReader reader = new SlipReader();
        lines.forEach(reader::line);
        return new Slip(
                reader.shop, reader.dates, reader.items, reader.subtotal, reader.tax, reader.discount, reader.total);
    }

    private void line(SlipLine line) {
        String text = line.text();
        if (dates.isEmpty()) {
            dates = WrittenDate.in(text);
            if (!dates.isEmpty()) {
                return;
            }
        }
        Optional<WrittenAmount> amount = WrittenAmount.atEnd(text);
        if (amount.isPresent()) {
            amount(line, amount.get());
        } else {
            words(text);
        }
    }

    private void words(String text) {
        long letters = text.chars().filter(Character::isLetter).count();
        if (shop.isEmpty() && letters >= 3) {
            shop = text;
        }
        waiting = letters >= 3 ? text : "";
    }

    private void amount(SlipLine line, WrittenAmount amount) {
        String before = amount.before();
        if (SUBTOTAL.matcher(before).find()) {
            subtotal = amount.minor();
        } else if (TOTAL.matcher(before).find()) {
            total = total == null ? Long.valueOf(amount.minor()) : total;
        } else if (TAX.matcher(before).find()) {
            tax = (tax == null ? 0 : tax) + amount.minor();
        } else if (amount.minor() < 0 || DISCOUNT.matcher(before).find()) {
            takeOff(Math.abs(amount.minor()));
        } else if (total == null && subtotal == null && !PAYMENT.matcher(before).find()) {
            item(line, amount);
        }
        waiting = "";
    }

    /** Before a subtotal it belongs to the line above it; after it, to the whole slip. */
    private void takeOff(long amount) {
        if (subtotal == null && !items.isEmpty()) {
            int last = items.size() - 1;
            Slip.Item item = items.get(last);
            items.set(
                    last,
                    new Slip.Item(
                            item.title(),
                            item.quantity(),
                            item.price(),
                            item.net(),
                            item.discount() + amount,
                            item.confidence()));
        } else if (total == null) {
            discount = (discount == null ? 0 : discount) + amount;
        }
    }

    private void item(SlipLine line, WrittenAmount amount) {
        Matcher last = QUANTITY_LAST.matcher(amount.before());
        if (last.matches()) {
            String title = last.group(1).isBlank() ? waiting : WrittenAmount.tidy(last.group(1));
            keep(title, Integer.parseInt(last.group(2)), amount.minor(), line.confidence());
            return;
        }
        Matcher first = QUANTITY_FIRST.matcher(amount.before());
        if (first.matches()) {
            keep(first.group(2), Integer.parseInt(first.group(1)), amount.minor(), line.confidence());
        } else {
            keep(amount.before(), 1, amount.minor(), line.confidence());
        }
    }

    /** A price that is no whole number of cents each is kept as one of the whole. */
    private void keep(String title, int quantity, long net, double confidence) {
        String name = title.isBlank() ? waiting : title;
        if (name.chars().filter(Character::isLetter).count() < 2) {
            return;
        }
        boolean even = quantity > 0 && net % quantity == 0;
        items.add(new Slip.Item(name, even ? quantity : 1, even ? net / quantity : net, net, 0, confidence));
    }
}
