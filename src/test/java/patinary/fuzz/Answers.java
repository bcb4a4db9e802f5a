package patinary.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.UUID;

/** What is put into the fields: what a person could well answer, and what nobody would. All from one seed. */
final class Answers {

    private static final List<String> HOSTILE = List.of(
            "",
            " ",
            "\u0000",
            "a\u0000b",
            "-1",
            "-0.01",
            "0",
            "0.00000000000001",
            "0.000000000000001",
            "1e308",
            "1E-400",
            "1e999999999",
            "NaN",
            "Infinity",
            "0x10",
            "2147483647",
            "2147483648",
            "-2147483649",
            "9223372036854775807",
            "9223372036854775808",
            "92233720368547758.07",
            "99999999999999999999999999",
            "1,000.00",
            "1.000,00",
            "\u0661\u0662\u0663",
            "1582-10-10",
            "0001-01-01",
            "0000-00-00",
            "-0044-03-15",
            "2025-02-30",
            "2024-02-29",
            "9999-12-31",
            "10000-01-01",
            "+999999999-12-31",
            "99999",
            "25:61",
            "\ud83d\ude00\ud83e\uddf5",
            "\ud800",
            "\u202egnp.\u0645\u0631\u062d\u0628\u0627",
            "\u200b",
            "e\u0301\ufb01\u2126",
            "<script>alert(1)</script>",
            "\"'><b>",
            "'; drop table piece; --",
            "${7*7}",
            "__${7*7}__",
            "#{shop.title}",
            "*{x}",
            "../../../../etc/passwd",
            "//example.org/",
            "https://example.org/",
            "\r\nX-Invented: 1",
            "=1+1",
            "@SUM(A1)",
            "%s%n%x",
            "%00%ff",
            "\\",
            "true",
            "null",
            "OWNER",
            "00000000-0000-0000-0000-000000000000",
            "not-an-id",
            "[]",
            "{}",
            "0:0",
            ":",
            ",",
            ";;;");

    private static final List<Integer> LENGTHS =
            List.of(41, 81, 101, 121, 201, 256, 501, 1001, 2001, 4001, 20_000, 70_000);

    private final Random random;
    private final List<String> ids;

    /** @param ids ids that the shop's pages named: right ones in the wrong place */
    Answers(long seed, List<String> ids) {
        this.random = new Random(seed);
        this.ids = ids;
    }

    Random random() {
        return random;
    }

    <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    boolean once(int in) {
        return random.nextInt(in) == 0;
    }

    String hostile() {
        return switch (random.nextInt(10)) {
            case 0 -> letters(one(LENGTHS));
            case 1 -> ids.isEmpty() ? UUID.randomUUID().toString() : one(ids);
            case 2 -> id();
            case 3 -> digits();
            case 4 -> anything(1 + random.nextInt(30));
            default -> one(HOSTILE);
        };
    }

    /** What the page offers already, or what fits the kind of field. */
    String likely(FoundForm.Field field) {
        if (!field.options().isEmpty()) {
            return one(field.options());
        }
        if (field.type().equals("hidden")) {
            return field.name().equals("id") && !once(4) ? id() : field.value();
        }
        if (!field.value().isEmpty() && !once(5)) {
            return field.value();
        }
        String name = field.name().toLowerCase(Locale.ROOT);
        if (field.type().equals("date") || name.endsWith("date") || name.endsWith("day")) {
            return "202" + (4 + random.nextInt(2)) + "-0" + (1 + random.nextInt(9)) + "-" + (10 + random.nextInt(18));
        }
        return switch (random.nextInt(4)) {
            case 0 -> "";
            case 1 -> String.valueOf(random.nextInt(40));
            case 2 -> random.nextInt(90) + "." + (10 + random.nextInt(90));
            default -> "Invented " + random.nextInt(5);
        };
    }

    String id() {
        return new UUID(
                        random.nextLong() & 0xffffffffffff0fffL | 0x4000,
                        random.nextLong() & 0x3fffffffffffffffL | 0x8000000000000000L)
                .toString();
    }

    /** What may stand in an address: mostly an id of the shop, now and then a year. */
    String place() {
        return once(3) || ids.isEmpty() ? one(List.of("2025", "2024", "1", "1582", "9999", "small", "x")) : one(ids);
    }

    byte[] file() {
        byte[] body = new byte[one(List.of(0, 1, 7, 300, 5000))];
        random.nextBytes(body);
        byte[] head = one(List.of(
                new byte[0],
                new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff, (byte) 0xe0},
                new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10},
                "RIFF\u0010\u0000\u0000\u0000WEBPVP8L".getBytes(StandardCharsets.ISO_8859_1),
                "PK\u0003\u0004".getBytes(StandardCharsets.ISO_8859_1),
                "%PDF-1.7\n".getBytes(StandardCharsets.ISO_8859_1),
                "<svg onload=\"x()\">".getBytes(StandardCharsets.ISO_8859_1),
                "date,title,price\n2025-03-01,=1+1,1e308\n,,\n".getBytes(StandardCharsets.UTF_8)));
        byte[] file = new byte[head.length + body.length];
        System.arraycopy(head, 0, file, 0, head.length);
        System.arraycopy(body, 0, file, head.length, body.length);
        return file;
    }

    private String letters(int length) {
        return one(List.of("x", "9", "\u00fc", "-", " ", "\u4e2d")).repeat(length);
    }

    private String digits() {
        StringBuilder digits = new StringBuilder(once(3) ? "-" : "");
        int length = 1 + random.nextInt(24);
        int point = once(2) ? random.nextInt(length) : -1;
        for (int i = 0; i < length; i++) {
            digits.append(i == point ? '.' : (char) ('0' + random.nextInt(10)));
        }
        return digits.toString();
    }

    private String anything(int length) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < length; i++) {
            text.appendCodePoint(once(3) ? random.nextInt(0x10000) : 32 + random.nextInt(96));
        }
        return text.toString();
    }
}
