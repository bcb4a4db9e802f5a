package patinary.yearfolder;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import patinary.shop.CurrentShop;
import patinary.taxyear.YearPage;
import patinary.web.Tongue;

/** The words of the files. */
@Component
class FolderWords {

    private static final String BASE = "yearfolder.";
    private static final String PLAIN = "plain";
    private static final String WIDE = "%-24s";

    private final MessageSource messages;
    private final CurrentShop shop;

    FolderWords(MessageSource messages, CurrentShop shop) {
        this.messages = messages;
        this.shop = shop;
    }

    /**
     * The plain list is in the shop's own language. A state's form is in English so far, and so is all that stands around its
     * lines: who reads it works with that form.
     */
    Locale locale() {
        return shop.taxTable().equals(PLAIN) ? shop.locale() : Tongue.OF_FILES;
    }

    String say(String key, Object... arguments) {
        return messages.getMessage(BASE + key, arguments, locale());
    }

    String title(int year) {
        return say("title", String.valueOf(year), shop.name());
    }

    String notAdvice() {
        return say("not-advice");
    }

    /** How the year is counted. */
    String basis(YearTables.Year year) {
        return messages.getMessage(year.page().adjustments().is().key(), null, locale());
    }

    /** The form in the words of the settings. */
    String form(YearTables.Year year) {
        return messages.getMessage(
                "shop.tax." + year.page().table(), null, year.page().table(), locale());
    }

    String check(String key) {
        return say("check." + key);
    }

    String part(YearPage.Part part) {
        return messages.getMessage(part.key(), null, locale());
    }

    /** What each file is, and how the files add up. */
    byte[] readme(YearTables.Year year) {
        StringBuilder text = new StringBuilder();
        text.append(title(year.year())).append("\n\n");
        text.append(notAdvice()).append("\n\n");
        text.append(basis(year)).append("\n\n");
        text.append(say("readme.form")).append("\n\n");
        for (FolderTable table : year.tables()) {
            file(text, table.name() + ".csv", say("about." + table.name()));
        }
        file(text, year.year() + ".xlsx", say("about.workbook"));
        file(text, "photos/", say("about.photos"));
        file(text, Manifest.NAME, say("about.manifest"));
        file(text, "summary.pdf", say("about.summary"));
        text.append('\n').append(say("readme.sums")).append('\n');
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void file(StringBuilder text, String name, String about) {
        text.append(String.format(Locale.ROOT, WIDE, name))
                .append("  ")
                .append(about)
                .append('\n');
    }
}
