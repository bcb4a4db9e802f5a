package patinary.web;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A language that the program speaks. The words of each stand in its own message files; the country beside it decides how
 * days, numbers and amounts are written (Unicode CLDR, as the platform carries it) and what paper is printed on.
 *
 * <p>What is shown follows the shop's language. What is read by programs or kept never does: see {@link #OF_FILES}.
 */
public enum Tongue {
    ENGLISH("en"),
    SPANISH("es");

    /**
     * The one language of what is made for programs, authorities and the console: CSV files, the shop archive, the files of a
     * year, commands and the log. A file has to be the same whoever made it and whatever the pages spoke that day: it is
     * compared byte by byte with an older one, read back by its names of columns, and handed to somebody who works with
     * forms in English. What a person types is no less independent of it: an amount is read by the same rules in every
     * language, so that none is read otherwise than it was meant.
     */
    public static final Locale OF_FILES = Locale.ENGLISH;

    /** Where paper is 8.5 by 11 inches; A4 elsewhere. Unicode CLDR, supplemental measurement data, paper size; from memory. */
    private static final Set<String> LETTER =
            Set.of("BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE");

    private static final String USUAL = "US";

    private final String code;

    Tongue(String code) {
        this.code = code;
    }

    /** Two letters by ISO 639-1. */
    public String code() {
        return code;
    }

    /** The language of a code; nothing where the program does not speak it. */
    public static Optional<Tongue> of(String code) {
        return Arrays.stream(values()).filter(one -> one.code.equals(code)).findFirst();
    }

    /** The one of a page in some language: English where the program does not speak it. */
    public static Tongue of(Locale page) {
        return of(page.getLanguage()).orElse(ENGLISH);
    }

    /** Every country there is, by the two letters of ISO 3166-1. */
    public static List<String> countries() {
        return Arrays.stream(Locale.getISOCountries()).sorted().toList();
    }

    /** This language by the customs of a country. */
    public Locale in(String country) {
        return new Locale.Builder().setLanguage(code).setRegion(country).build();
    }

    /** The first of the languages asked for that the program speaks, as its own country writes it; English where there is none. */
    public static Locale best(Collection<Locale> asked) {
        return asked.stream()
                .flatMap(wish -> of(wish.getLanguage()).stream().map(tongue -> tongue.in(country(wish))))
                .findFirst()
                .orElseGet(() -> ENGLISH.in(USUAL));
    }

    private static String country(Locale wish) {
        return countries().contains(wish.getCountry()) ? wish.getCountry() : USUAL;
    }

    /** The column of a file of reference that has a text in the language of a page: {@code name}, {@code name_es}. */
    public static String column(String column, Locale locale) {
        Tongue tongue = of(locale);
        return tongue == ENGLISH ? column : column + "_" + tongue.code;
    }

    /** Whether a country prints on Letter, and not on A4. */
    public static boolean isLetter(Locale locale) {
        return LETTER.contains(locale.getCountry());
    }
}
