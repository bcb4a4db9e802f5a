package patinary.bringing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import patinary.money.ShopCurrency;
import patinary.selling.ManySales;

/** Mutates the thirty files with a seed and reads what comes out, from the first byte to the plan. */
final class ReaderFuzz {

    private static final ShopCurrency DOLLARS = ShopCurrency.ofCode("USD");
    private static final byte[] TELLING =
            "\"\",;|\t\r\n.-()$0123456789 \0\u00ff/:T'".getBytes(StandardCharsets.ISO_8859_1);

    private ReaderFuzz() {}

    /** What a run saw; something of each must have been seen, or it has tried nothing. */
    record Seen(long inputs, long rows, long sales, long faults, long slowestNanos) {}

    static Seen run(long inputs, long seed) {
        Random random = new Random(seed);
        long rows = 0;
        long sales = 0;
        long faults = 0;
        long slowest = 0;
        for (long i = 0; i < inputs; i++) {
            byte[] bytes = mutated(random);
            long start = System.nanoTime();
            Plan plan;
            Sheet sheet;
            try {
                Mapping mapping = said(MappingGuess.of(bytes), random);
                sheet = Sheet.read(mapping.encoding().text(bytes), mapping.delimiter());
                plan = planner(mapping).plan(sheet);
            } catch (RuntimeException failure) {
                throw new AssertionError("Input " + i + " of seed " + seed + ": " + Arrays.toString(bytes), failure);
            }
            slowest = Math.max(slowest, System.nanoTime() - start);
            check(sheet, plan);
            rows += sheet.rows().size();
            sales += plan.sales().size();
            faults += plan.faults().size();
        }
        return new Seen(inputs, rows, sales, faults, slowest);
    }

    static byte[] mutated(Random random) {
        byte[] bytes =
                ThirtyFiles.ALL.get(random.nextInt(ThirtyFiles.ALL.size())).bytes();
        int changes = 1 + random.nextInt(8);
        for (int i = 0; i < changes; i++) {
            bytes = mutated(bytes, random);
        }
        return bytes;
    }

    private static byte[] mutated(byte[] bytes, Random random) {
        int at = bytes.length == 0 ? 0 : random.nextInt(bytes.length);
        int length = Math.min(bytes.length - at, random.nextInt(40));
        return switch (random.nextInt(7)) {
            case 0 -> spliced(bytes, at, 0, new byte[] {TELLING[random.nextInt(TELLING.length)]});
            case 1 -> spliced(bytes, at, Math.min(1, bytes.length), new byte[] {(byte) random.nextInt(256)});
            case 2 -> spliced(bytes, at, length, new byte[0]);
            case 3 -> spliced(bytes, at, 0, Arrays.copyOfRange(bytes, at, at + length));
            case 4 -> Arrays.copyOf(bytes, at);
            case 5 -> {
                byte[] other = ThirtyFiles.ALL
                        .get(random.nextInt(ThirtyFiles.ALL.size()))
                        .bytes();
                yield spliced(bytes, at, length, Arrays.copyOf(other, random.nextInt(200)));
            }
            default -> {
                byte[] many = new byte[random.nextInt(120)];
                Arrays.fill(many, TELLING[random.nextInt(TELLING.length)]);
                yield spliced(bytes, at, 0, many);
            }
        };
    }

    private static byte[] spliced(byte[] bytes, int at, int less, byte[] more) {
        byte[] result = new byte[bytes.length - less + more.length];
        System.arraycopy(bytes, 0, result, 0, at);
        System.arraycopy(more, 0, result, at, more.length);
        System.arraycopy(bytes, at + less, result, at + more.length, bytes.length - at - less);
        return result;
    }

    /** What a person would say of a file, right or wrong. */
    private static Mapping said(Mapping guess, Random random) {
        DateForm[] dates = DateForm.values();
        NumberForm[] numbers = NumberForm.values();
        return new Mapping(
                guess.encoding(),
                guess.delimiter(),
                guess.leadIn(),
                guess.header(),
                guess.dates() == null ? dates[random.nextInt(dates.length)] : guess.dates(),
                guess.numbers() == null ? numbers[random.nextInt(numbers.length)] : guess.numbers(),
                random.nextBoolean(),
                true,
                new UUID(0, 1),
                guess.columns());
    }

    private static Planner planner(Mapping mapping) {
        Goods goods = Goods.of(
                List.of(
                        new Goods.Piece("P0001", "Tin tray", true),
                        new Goods.Piece("P0002", "Enamel jug", true),
                        new Goods.Piece("P0003", "Sign", true),
                        new Goods.Piece("P0005", "Stool", false)),
                List.of());
        return new Planner(
                new UUID(0, 2),
                mapping,
                DOLLARS,
                Set.of("A-102"),
                Map.of(5, RowChoice.supply(new UUID(0, 3).toString(), "1"), 3, RowChoice.OUT),
                goods,
                true,
                place -> place);
    }

    private static void check(Sheet sheet, Plan plan) {
        assertThat(sheet.rows().size()).isLessThanOrEqualTo(Sheet.MOST_ROWS);
        for (Sheet.Row row : sheet.rows()) {
            boolean within = row.cells().size() <= Sheet.MOST_COLUMNS
                    && row.cells().stream()
                            .allMatch(cell -> cell.length() <= Sheet.LONGEST_CELL && cell.indexOf('\0') < 0);
            assertThat(within).isTrue();
        }
        for (Plan.Planned order : plan.orders()) {
            assertThat(order.sale() != null).isEqualTo(order.standing() == Plan.Standing.NEW);
            assertThat(order.faults().isEmpty()).isEqualTo(order.standing() != Plan.Standing.WRONG);
        }
        for (ManySales.Typed sale : plan.sales()) {
            assertThat(sale.lines()).isNotEmpty();
            for (ManySales.Line line : sale.lines()) {
                assertThat(DOLLARS.parsePlain(line.price()).isNegative()).isFalse();
                assertThat(DOLLARS.parsePlain(line.discount()).isNegative()).isFalse();
            }
        }
    }
}
