package patinary.money;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * How the prices of a shop end, for instance in .00 or .95, or in 9.50. A price goes up to the next ending and never
 * below what was reckoned. That a price with a certain ending sells better is nobody's claim here; it is her own habit.
 */
public final class PriceEndings {

    /** The last digits of a price, counted in minor units, and the power of ten they repeat with. */
    private record Ending(long minor, long every, String text) {

        long next(long price) {
            long rest = Math.floorMod(price - minor, every);
            return rest == 0 ? price : Math.addExact(price, every - rest);
        }
    }

    private static final Pattern BETWEEN = Pattern.compile("[\\s;]+");
    private static final int MOST_DIGITS = 9;

    private final List<Ending> endings;

    private PriceEndings(List<Ending> endings) {
        this.endings = endings;
    }

    /**
     * Reads endings with spaces or semicolons between them: {@code .00 .95} or {@code 9,50}; none is an empty text.
     *
     * @param digits how many decimals the currency has; an ending has all of them
     * @return nothing where one cannot be read
     */
    public static Optional<PriceEndings> parse(String typed, int digits) {
        Pattern form = Pattern.compile(digits == 0 ? "\\d{1,6}" : "\\d{0,4}[.,]\\d{" + digits + "}");
        List<String> words = Arrays.stream(BETWEEN.split(typed.strip()))
                .filter(word -> !word.isEmpty())
                .toList();
        if (words.stream().anyMatch(word -> !form.matcher(word).matches())) {
            return Optional.empty();
        }
        return Optional.of(new PriceEndings(words.stream()
                .map(PriceEndings::ending)
                .sorted(Comparator.comparing(Ending::every).thenComparing(Ending::minor))
                .distinct()
                .toList()));
    }

    private static Ending ending(String word) {
        String digits = word.replaceAll("\\D", "");
        long every = 1;
        for (int i = 0; i < Math.min(digits.length(), MOST_DIGITS); i++) {
            every *= 10;
        }
        return new Ending(Long.parseLong(digits), every, word.replace(',', '.'));
    }

    /** The smallest price with one of the endings that is no lower; the price itself where there are none. */
    public Amount upFrom(Amount price) {
        return endings.stream()
                .map(ending -> Amount.of(ending.next(price.minor())))
                .min(Comparator.naturalOrder())
                .orElse(price);
    }

    public boolean isEmpty() {
        return endings.isEmpty();
    }

    /** As they are kept and shown: {@code .00 .95}. */
    @Override
    public String toString() {
        return endings.stream().map(Ending::text).collect(Collectors.joining(" "));
    }
}
