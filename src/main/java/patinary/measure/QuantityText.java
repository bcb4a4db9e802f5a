package patinary.measure;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads one quantity: a number and a unit, a cut, or a bare number of things. */
final class QuantityText {

    private static final Pattern BARE = Pattern.compile(NumberText.FORM);

    private static final Pattern MEASURED = Pattern.compile("(" + NumberText.FORM + ") ?([^0-9 ].*)");

    private static final Pattern CUT = Pattern.compile("(?i)(" + NumberText.FORM + ") ?([a-z\"\u201d'\u2032\u2019]*?)"
            + " ?(?:x|by) ?(" + NumberText.FORM + ")(?: ?([^0-9 ].*))?");

    private QuantityText() {}

    static Quantity read(String typed) {
        String text = NumberText.plain(typed);
        if (text.isEmpty()) {
            throw new UnreadableQuantity("measure.error.missing", "");
        }
        if (isBareNumber(text)) {
            return new Quantity(NumberText.read(text), Unit.EACH);
        }
        Matcher cut = CUT.matcher(text);
        if (cut.matches()) {
            return cut(cut, text);
        }
        Matcher measured = MEASURED.matcher(text);
        if (measured.matches()) {
            return new Quantity(NumberText.read(measured.group(1)), unit(measured.group(2)));
        }
        throw new UnreadableQuantity("measure.error.number", typed.strip());
    }

    static boolean isBareNumber(String plainText) {
        return BARE.matcher(plainText).matches();
    }

    /** The number and the word after it where the word is not a unit; the number is one where none is written. */
    static Optional<Counted> counted(String plainText) {
        Matcher measured = MEASURED.matcher(plainText);
        if (measured.matches()) {
            return Optional.of(new Counted(NumberText.read(measured.group(1)), measured.group(2)));
        }
        return plainText.isEmpty() || Character.isDigit(plainText.charAt(0))
                ? Optional.empty()
                : Optional.of(new Counted(BigDecimal.ONE, plainText));
    }

    /** Width and height of a cut. */
    static List<Quantity> sides(String typed) {
        String text = NumberText.plain(typed);
        Matcher cut = CUT.matcher(text);
        if (!cut.matches()) {
            throw new UnreadableQuantity("measure.error.cut", typed.strip());
        }
        return sides(cut, text);
    }

    private static Quantity cut(Matcher cut, String text) {
        List<Quantity> sides = sides(cut, text);
        return Quantity.area(sides.get(0), sides.get(1));
    }

    private static List<Quantity> sides(Matcher cut, String text) {
        if (cut.group(4) == null) {
            throw new UnreadableQuantity("measure.error.unitMissing", text);
        }
        Unit heightUnit = unit(cut.group(4));
        Unit widthUnit = widthUnit(cut.group(2), heightUnit);
        if (widthUnit.dimension() != Dimension.LENGTH || heightUnit.dimension() != Dimension.LENGTH) {
            throw new UnreadableQuantity("measure.error.cut", text);
        }
        return List.of(
                new Quantity(NumberText.read(cut.group(1)), widthUnit),
                new Quantity(NumberText.read(cut.group(3)), heightUnit));
    }

    private static Unit widthUnit(@Nullable String word, Unit heightUnit) {
        return word == null || word.isEmpty() ? heightUnit : unit(word);
    }

    private static Unit unit(String word) {
        return UnitWords.find(word).orElseThrow(() -> new UnreadableQuantity("measure.error.unit", word));
    }

    /** So many of something named. */
    record Counted(BigDecimal number, String name) {}
}
