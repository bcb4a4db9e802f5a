package patinary.bringing;

import static patinary.bringing.Delimiter.COMMA;
import static patinary.bringing.Delimiter.PIPE;
import static patinary.bringing.Delimiter.SEMICOLON;
import static patinary.bringing.Delimiter.TAB;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import patinary.bringing.Encoding.Sign;

/** Thirty differently shaped files of the same invented sales, and what must be told of each by looking at it. */
final class ThirtyFiles {

    /**
     * A file.
     *
     * @param dates the form of its dates, or null where a person has to say
     * @param numbers the form of its numbers, or null where a person has to say
     * @param then the forms a person says where they are open
     * @param faults line and reason of each row that cannot be read
     */
    record OneFile(
            String name,
            byte[] bytes,
            Encoding encoding,
            Sign sign,
            Delimiter delimiter,
            int leadIn,
            boolean header,
            @Nullable DateForm dates,
            @Nullable NumberForm numbers,
            DateForm then,
            List<String> faults) {

        @Override
        public String toString() {
            return name;
        }
    }

    private static final Shape PLAIN = Shape.plain();
    private static final Shape COMMAS = PLAIN.delimiter(';').date("dd.MM.yyyy").amount(ThirtyFiles::comma);

    static final List<OneFile> ALL = all();

    private ThirtyFiles() {}

    private static List<OneFile> all() {
        List<OneFile> files = new ArrayList<>();
        files.add(file("plain", PLAIN));
        files.add(file("with a byte-order mark", PLAIN.marked(), Encoding.UTF_8, Sign.MARK));
        files.add(file("windows-1252", PLAIN.charset("windows-1252"), Encoding.WINDOWS_1252, Sign.FALLBACK));
        files.add(file("ISO 8859-1", PLAIN.charset("ISO-8859-1"), Encoding.WINDOWS_1252, Sign.FALLBACK));
        files.add(file("UTF-16, little end, marked", PLAIN.charset("UTF-16LE").marked(), Encoding.UTF_16LE, Sign.MARK));
        files.add(file("UTF-16, big end, marked", PLAIN.charset("UTF-16BE").marked(), Encoding.UTF_16BE, Sign.MARK));
        files.add(file("UTF-16, little end, bare", PLAIN.charset("UTF-16LE"), Encoding.UTF_16LE, Sign.LOOKS));
        files.add(file("UTF-16, big end, bare", PLAIN.charset("UTF-16BE"), Encoding.UTF_16BE, Sign.LOOKS));
        files.add(file("tabs", PLAIN.delimiter('\t'), TAB));
        files.add(file("upright lines", PLAIN.delimiter('|'), PIPE));
        files.add(file("semicolons", PLAIN.delimiter(';'), SEMICOLON));
        files.add(file("lines end with a line feed", PLAIN.newline("\n")));
        files.add(file("lines end with a carriage return", PLAIN.newline("\r")));
        files.add(file("everything quoted", PLAIN.quoted()));
        files.add(dated("day first, points", COMMAS, null, NumberForm.COMMA, DateForm.DAY_MONTH_YEAR));
        files.add(dated("day first, slashes", PLAIN.date("dd/MM/yyyy"), DateForm.DAY_MONTH_YEAR));
        files.add(dated("month first, slashes", PLAIN.date("MM/dd/yyyy"), DateForm.MONTH_DAY_YEAR));
        files.add(
                dated("month first, no zeros, two digits of the year", PLAIN.date("M/d/yy"), DateForm.MONTH_DAY_YEAR));
        files.add(dated("month as a word behind the day", PLAIN.date("d MMM yyyy"), DateForm.MONTH_AS_WORD));
        files.add(dated("month as a word before the day", PLAIN.date("MMMM d, yyyy"), DateForm.MONTH_AS_WORD));
        files.add(file("with a time and its zone", PLAIN.date("yyyy-MM-dd'T'HH:mm:ss'Z'")));
        files.add(dated("with a time of twelve hours", PLAIN.date("MM/dd/yyyy, h:mm a"), DateForm.MONTH_DAY_YEAR));
        files.add(file("digits of a date only", PLAIN.date("yyyyMMdd")));
        files.add(file("dollars and marks between thousands", PLAIN.amount(ThirtyFiles::dollars)));
        files.add(numbers(
                "spaces between thousands", PLAIN.amount(ThirtyFiles::spaced).delimiter(';'), SEMICOLON));
        files.add(file("code behind the amount", PLAIN.amount(amount -> amount + " USD")));
        files.add(new OneFile(
                "no names of columns",
                PLAIN.head(List.of()).bytes(),
                Encoding.UTF_8,
                Sign.LOOKS,
                COMMA,
                0,
                false,
                null,
                null,
                DateForm.YEAR_MONTH_DAY,
                List.of()));
        files.add(new OneFile(
                "a title above the table",
                PLAIN.around("Sales report\r\n\r\nMade 2025-05-01\r\n", "").bytes(),
                Encoding.UTF_8,
                Sign.LOOKS,
                COMMA,
                2,
                true,
                DateForm.YEAR_MONTH_DAY,
                NumberForm.POINT,
                DateForm.YEAR_MONTH_DAY,
                List.of()));
        files.add(broken(
                "rows that cannot be read",
                """
                A-104,2025-13-40,Lamp,P0004,1,7.00,,,\r
                A-105,2025-05-01,Stool,P0005,1,seven,,,\r
                A-106,2025-05-01,Stool\r
                ,2025-05-01,Stool,P0005,1,7.00,,,\r
                A-107,2025-05-01,Stool,P0005,-1,7.00,,,\r
                A-108,2025-05-01,Stool,P0005,1,(7.00),,,\r
                A-109,2025-05-01,Stool,P0005,1,7.005,,,\r
                A-110,2025-05-01,Stool,P0005,1,\u20ac7.00,,,\r
                A-111,2025-05-01,Stool,P0005,1,7.00,,,x,y,z\r
                """,
                "6 date",
                "7 number",
                "8 cells",
                "8 no-price",
                "9 no-order",
                "10 quantity",
                "11 negative",
                "12 decimals",
                "13 currency",
                "14 cells"));
        files.add(broken(
                "a quote that is never closed",
                "A-104,2025-05-01,\"Lamp,P0004,1,7.00,,,\r\nA-105,2025-05-02,Stool,P0005,1,7.00,,,\r\n",
                "6 cells",
                "6 no-price"));
        return List.copyOf(files);
    }

    private static OneFile file(String name, Shape shape) {
        return file(name, shape, COMMA);
    }

    private static OneFile file(String name, Shape shape, Delimiter delimiter) {
        return new OneFile(
                name,
                shape.bytes(),
                Encoding.UTF_8,
                Sign.LOOKS,
                delimiter,
                0,
                true,
                DateForm.YEAR_MONTH_DAY,
                NumberForm.POINT,
                DateForm.YEAR_MONTH_DAY,
                List.of());
    }

    private static OneFile file(String name, Shape shape, Encoding encoding, Sign sign) {
        return new OneFile(
                name,
                shape.bytes(),
                encoding,
                sign,
                COMMA,
                0,
                true,
                DateForm.YEAR_MONTH_DAY,
                NumberForm.POINT,
                DateForm.YEAR_MONTH_DAY,
                List.of());
    }

    private static OneFile dated(String name, Shape shape, DateForm form) {
        return dated(name, shape, form, NumberForm.POINT, form);
    }

    private static OneFile dated(
            String name, Shape shape, @Nullable DateForm dates, NumberForm numbers, DateForm then) {
        Delimiter delimiter = shape.delimiter() == ';' ? SEMICOLON : COMMA;
        DateForm told = then == DateForm.DAY_MONTH_YEAR ? DateForm.DAY_MONTH_YEAR : dates;
        return new OneFile(
                name, shape.bytes(), Encoding.UTF_8, Sign.LOOKS, delimiter, 0, true, told, numbers, then, List.of());
    }

    private static OneFile numbers(String name, Shape shape, Delimiter delimiter) {
        return new OneFile(
                name,
                shape.bytes(),
                Encoding.UTF_8,
                Sign.LOOKS,
                delimiter,
                0,
                true,
                DateForm.YEAR_MONTH_DAY,
                NumberForm.COMMA,
                DateForm.YEAR_MONTH_DAY,
                List.of());
    }

    private static OneFile broken(String name, String rows, String... faults) {
        byte[] bytes = PLAIN.around("", rows).text().getBytes(StandardCharsets.UTF_8);
        return new OneFile(
                name,
                bytes,
                Encoding.UTF_8,
                Sign.LOOKS,
                COMMA,
                0,
                true,
                DateForm.YEAR_MONTH_DAY,
                NumberForm.POINT,
                DateForm.YEAR_MONTH_DAY,
                List.of(faults));
    }

    private static String comma(String amount) {
        return amount.replace('.', ',').replace("1234", "1.234");
    }

    private static String spaced(String amount) {
        return amount.replace('.', ',').replace("1234", "1\u00a0234");
    }

    private static String dollars(String amount) {
        return "$" + amount.replace("1234", "1,234");
    }
}
