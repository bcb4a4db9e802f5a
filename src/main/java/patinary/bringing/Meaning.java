package patinary.bringing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** What a column says. The words are those a column of that meaning may be headed with, best first; trade words of no maker. */
enum Meaning {
    ORDER("order number", "order id", "order no", "order reference", "order", "reference", "sale id", "transaction id"),
    DATE("order date", "sale date", "date sold", "sold on", "date", "day", "paid on", "created", "time"),
    TITLE("item title", "item name", "product name", "title", "item", "product", "description", "article", "what"),
    CODE("item code", "code", "sku", "stock code", "label", "custom label"),
    QUANTITY("quantity", "qty", "count", "number of items", "items", "pieces"),
    PRICE("item price", "unit price", "price each", "price"),
    LINE_TOTAL("item total", "line total", "subtotal", "amount", "net"),
    LINE_DISCOUNT("item discount", "line discount"),
    ORDER_DISCOUNT("discount", "order discount", "coupon", "reduction"),
    SHIPPING("shipping charged", "shipping", "postage", "delivery", "carriage"),
    TAX("sales tax", "tax", "vat"),
    FEE("fees", "fee", "commission", "charges"),
    TOTAL("order total", "grand total", "total", "sum"),
    BUYER("buyer", "customer", "buyer handle", "buyer name", "handle"),
    TAX_PLACE("ship to state", "state", "region", "province", "place", "county", "country");

    private static final Pattern SIGNS = Pattern.compile("[^\\p{L}\\p{N}]+");

    private final List<String> words;

    Meaning(String... words) {
        this.words = List.of(words);
    }

    /** Whether the column holds an amount of money. */
    boolean isAmount() {
        return switch (this) {
            case PRICE, LINE_TOTAL, LINE_DISCOUNT, ORDER_DISCOUNT, SHIPPING, TAX, FEE, TOTAL -> true;
            default -> false;
        };
    }

    /** Whether the column says something of the whole order and not of one row. */
    boolean isOfOrder() {
        return switch (this) {
            case ORDER_DISCOUNT, SHIPPING, TAX, FEE, TOTAL -> true;
            default -> false;
        };
    }

    public String messageKey() {
        return "bringing.meaning." + name();
    }

    /** What a field of the form of a sale is about; nothing where no column says it. */
    static Optional<Meaning> ofField(String field) {
        return Optional.ofNullable(
                switch (field.replaceFirst("^lines\\[\\d+]\\.", "line ")) {
                    case "date" -> DATE;
                    case "order" -> ORDER;
                    case "buyer" -> BUYER;
                    case "discount" -> ORDER_DISCOUNT;
                    case "shipping" -> SHIPPING;
                    case "tax" -> TAX;
                    case "fee" -> FEE;
                    case "note" -> TAX_PLACE;
                    case "line title" -> TITLE;
                    case "line codes" -> CODE;
                    case "line quantity" -> QUANTITY;
                    case "line price" -> PRICE;
                    case "line discount" -> LINE_DISCOUNT;
                    default -> null;
                });
    }

    /** The names of columns as they are compared with the words: in small letters, without signs. */
    static List<String> plain(List<String> header) {
        return header.stream()
                .map(head -> SIGNS.matcher(head.toLowerCase(Locale.ROOT))
                        .replaceAll(" ")
                        .strip())
                .toList();
    }

    /** The first column headed with one of the words, as a whole text; the header as {@link #plain} has it. */
    Optional<Integer> proposed(List<String> header) {
        return words.stream().map(header::indexOf).filter(column -> column >= 0).findFirst();
    }
}
