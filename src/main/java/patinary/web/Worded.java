package patinary.web;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.springframework.context.i18n.LocaleContextHolder;

/** A text of a file of reference, in each language that the program speaks. */
public record Worded(Map<Tongue, String> texts) {

    /**
     * The text of a row: {@code text} for English, {@code text_es} for Spanish.
     *
     * @param row the row's cells by the names of their columns
     */
    public static Worded of(UnaryOperator<String> row, String column) {
        Map<Tongue, String> texts = new EnumMap<>(Tongue.class);
        Arrays.stream(Tongue.values())
                .forEach(tongue ->
                        texts.put(tongue, row.apply(Tongue.column(column, Locale.forLanguageTag(tongue.code())))));
        return new Worded(texts);
    }

    /** As the page says it that is being made. */
    public String here() {
        return in(LocaleContextHolder.getLocale());
    }

    /** In a language; in English where the program does not speak it. */
    public String in(Locale locale) {
        return texts.get(Tongue.of(locale));
    }
}
