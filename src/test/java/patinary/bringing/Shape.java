package patinary.bringing;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;

/**
 * Invented sales as any shop might write them into a file. What is sold is the same in every shape: a tray, a jug dear enough
 * to need a mark between its thousands, and a sign with three brushes in one order.
 */
record Shape(
        Charset charset,
        String mark,
        String newline,
        char delimiter,
        boolean quoteAll,
        String date,
        UnaryOperator<String> amount,
        List<String> head,
        String before,
        String after) {

    static final List<String> ENGLISH = List.of(
            "Order number", "Order date", "Item title", "SKU", "Quantity", "Price", "Shipping", "Order total", "Buyer");
    static final List<String> GERMAN =
            List.of("Bestellung", "Datum", "Was", "Code", "Menge", "Preis", "Versand", "Summe", "K\u00e4ufer");

    private record Sale(
            String order,
            String day,
            String title,
            String code,
            String quantity,
            String price,
            String ship,
            String total,
            String buyer) {}

    private static final List<Sale> SALES = List.of(
            new Sale(
                    "A-101", "2025-03-14", "Tin tray, painted; round", "P0001", "1", "48.00", "6.00", "54.00", "kit|w"),
            new Sale(
                    "A-102",
                    "2025-03-05",
                    "Enamel \"blue\" jug",
                    "P0002",
                    "1",
                    "1234.50",
                    "0.00",
                    "1234.50",
                    "J\u00f6rg"),
            new Sale("A-103", "2025-04-02", "Caf\u00e9 sign", "P0003", "1", "20.00", "4.00", "39.00", "mo"),
            new Sale("A-103", "2025-04-02", "Round brush", "", "3", "5.00", "", "", ""));

    /** What each of the rows says, however it is written. */
    static final List<String> SAID = List.of(
            "A-101 2025-03-14 Tin tray, painted; round/P0001 1 4800 600 5400 kit|w",
            "A-102 2025-03-05 Enamel \"blue\" jug/P0002 1 123450 0 123450 J\u00f6rg",
            "A-103 2025-04-02 Caf\u00e9 sign/P0003 1 2000 400 3900 mo",
            "A-103 2025-04-02 Round brush/ 3 1500 - - ");

    static Shape plain() {
        return new Shape(
                StandardCharsets.UTF_8, "", "\r\n", ',', false, "yyyy-MM-dd", amount -> amount, ENGLISH, "", "");
    }

    Shape charset(String name) {
        return new Shape(Charset.forName(name), mark, newline, delimiter, quoteAll, date, amount, head, before, after);
    }

    Shape marked() {
        return new Shape(charset, "\uFEFF", newline, delimiter, quoteAll, date, amount, head, before, after);
    }

    Shape newline(String other) {
        return new Shape(charset, mark, other, delimiter, quoteAll, date, amount, head, before, after);
    }

    Shape delimiter(char other) {
        return new Shape(charset, mark, newline, other, quoteAll, date, amount, head, before, after);
    }

    Shape quoted() {
        return new Shape(charset, mark, newline, delimiter, true, date, amount, head, before, after);
    }

    Shape date(String pattern) {
        return new Shape(charset, mark, newline, delimiter, quoteAll, pattern, amount, head, before, after);
    }

    Shape amount(UnaryOperator<String> writing) {
        return new Shape(charset, mark, newline, delimiter, quoteAll, date, writing, head, before, after);
    }

    Shape head(List<String> other) {
        return new Shape(charset, mark, newline, delimiter, quoteAll, date, amount, other, before, after);
    }

    Shape around(String above, String below) {
        return new Shape(charset, mark, newline, delimiter, quoteAll, date, amount, head, above, below);
    }

    byte[] bytes() {
        return text().getBytes(charset);
    }

    String text() {
        StringBuilder text = new StringBuilder(mark).append(before);
        if (!head.isEmpty()) {
            text.append(row(head));
        }
        for (Sale sale : SALES) {
            text.append(row(List.of(
                    sale.order(),
                    LocalDate.parse(sale.day()).atTime(9, 5).format(DateTimeFormatter.ofPattern(date, Locale.ENGLISH)),
                    sale.title(),
                    sale.code(),
                    sale.quantity(),
                    amount.apply(sale.price()),
                    sale.ship().isEmpty() ? "" : amount.apply(sale.ship()),
                    sale.total().isEmpty() ? "" : amount.apply(sale.total()),
                    sale.buyer())));
        }
        return text.append(after).toString();
    }

    private String row(List<String> cells) {
        return String.join(
                        String.valueOf(delimiter),
                        cells.stream().map(this::cell).toList())
                + newline;
    }

    private String cell(String text) {
        boolean needed = text.indexOf(delimiter) >= 0 || text.contains("\"") || text.contains("\n");
        return quoteAll || needed ? "\"" + text.replace("\"", "\"\"") + "\"" : text;
    }
}
