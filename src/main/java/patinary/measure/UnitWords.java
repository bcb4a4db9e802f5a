package patinary.measure;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The words by which people name units, besides their codes: plurals, full names, square signs, in every language that the
 * pages speak, whichever it is today: none of these words is another unit in the other. Case does not matter, so the kitchen's T for a tablespoon is not understood: next to t it would be a guess.
 */
final class UnitWords {

    private static final Map<String, Unit> WORDS = words();

    private UnitWords() {}

    static Optional<Unit> find(String word) {
        String plain = word.strip()
                .toLowerCase(Locale.ROOT)
                .replace("²", "2")
                .replace(".", "")
                .replaceAll("\\s+", " ");
        return Optional.ofNullable(WORDS.get(plain));
    }

    private static Map<String, Unit> words() {
        Map<String, Unit> words = new HashMap<>();
        for (Unit unit : Unit.values()) {
            words.put(unit.code(), unit);
        }
        volumes(words);
        masses(words);
        lengths(words);
        areas(words);
        spanish(words);
        return Map.copyOf(words);
    }

    private static void volumes(Map<String, Unit> words) {
        put(words, Unit.MILLILITRE, "millilitre", "millilitres", "milliliter", "milliliters");
        put(words, Unit.LITRE, "litre", "litres", "liter", "liters");
        put(words, Unit.TEASPOON, "teaspoon", "teaspoons");
        put(words, Unit.TABLESPOON, "tablespoon", "tablespoons");
        put(words, Unit.FLUID_OUNCE, "fl oz", "fluid ounce", "fluid ounces");
        put(words, Unit.CUP, "cups");
        put(words, Unit.PINT, "pints", "pt");
        put(words, Unit.QUART, "quarts", "qt");
        put(words, Unit.GALLON, "gallons", "gal");
    }

    private static void masses(Map<String, Unit> words) {
        put(words, Unit.GRAM, "gram", "grams");
        put(words, Unit.KILOGRAM, "kilogram", "kilograms");
        put(words, Unit.OUNCE, "ounce", "ounces");
        put(words, Unit.POUND, "pound", "pounds", "lbs");
    }

    private static void lengths(Map<String, Unit> words) {
        put(words, Unit.CENTIMETRE, "centimetre", "centimetres", "centimeter", "centimeters");
        put(words, Unit.MILLIMETRE, "millimetre", "millimetres", "millimeter", "millimeters");
        put(words, Unit.METRE, "metre", "metres", "meter", "meters");
        put(words, Unit.INCH, "inch", "inches", "\"", "\u2032\u2032", "''", "\u201d");
        put(words, Unit.FOOT, "foot", "feet", "'", "\u2032", "\u2019");
        put(words, Unit.YARD, "yard", "yards");
    }

    private static void areas(Map<String, Unit> words) {
        put(words, Unit.SQUARE_CENTIMETRE, "sq cm");
        put(words, Unit.SQUARE_METRE, "sq m");
        put(words, Unit.SQUARE_INCH, "sq in", "square inch", "square inches");
        put(words, Unit.SQUARE_FOOT, "sq ft", "square foot", "square feet");
        put(words, Unit.SQUARE_YARD, "sq yd", "square yard", "square yards");
    }

    /** As cooks write them; common practice, no source. */
    private static void spanish(Map<String, Unit> words) {
        put(words, Unit.MILLILITRE, "mililitro", "mililitros");
        put(words, Unit.LITRE, "litro", "litros");
        put(words, Unit.TEASPOON, "cucharadita", "cucharaditas", "cdta", "cdtas");
        put(words, Unit.TABLESPOON, "cucharada", "cucharadas", "cda", "cdas");
        put(words, Unit.FLUID_OUNCE, "onza líquida", "onzas líquidas");
        put(words, Unit.CUP, "taza", "tazas");
        put(words, Unit.GALLON, "galón", "galones");
        put(words, Unit.GRAM, "gramo", "gramos");
        put(words, Unit.KILOGRAM, "kilo", "kilos", "kilogramo", "kilogramos");
        put(words, Unit.OUNCE, "onza", "onzas");
        put(words, Unit.POUND, "libra", "libras");
        put(words, Unit.CENTIMETRE, "centímetro", "centímetros");
        put(words, Unit.MILLIMETRE, "milímetro", "milímetros");
        put(words, Unit.METRE, "metro", "metros");
        put(words, Unit.INCH, "pulgada", "pulgadas");
        put(words, Unit.YARD, "yarda", "yardas");
    }

    private static void put(Map<String, Unit> words, Unit unit, String... names) {
        for (String name : names) {
            words.put(name, unit);
        }
    }
}
