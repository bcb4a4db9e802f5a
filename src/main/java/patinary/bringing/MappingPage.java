package patinary.bringing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.web.Choice;

/** What the mapping page shows: the first rows, what each column can be, and what of it can be read in two ways. */
@Component
class MappingPage {

    private static final int SHOWN = 8;
    private static final int EXAMPLE = 30;

    /** A column as it is offered: its number, its name, and the first thing that stands in it. */
    record Column(int place, String name, String example) {

        Choice choice() {
            String text = (place + 1) + ": "
                    + (name.isEmpty() ? example : example.isEmpty() ? name : name + " (" + example + ")");
            return Choice.named(String.valueOf(place), text);
        }
    }

    /** A date that is two days, depending on how it is read. */
    record TwoDays(String text, LocalDate dayFirst, LocalDate monthFirst) {}

    private final KnownGoods known;

    MappingPage(KnownGoods known) {
        this.known = known;
    }

    String fill(Model model, Drafts.Draft draft, MappingForm form) {
        Mapping mapping = draft.mapping();
        Sheet sheet = draft.sheet();
        List<Column> columns = columns(mapping, sheet);
        model.addAttribute("form", form);
        model.addAttribute("draft", draft);
        model.addAttribute("columns", columns);
        model.addAttribute("choices", columns.stream().map(Column::choice).toList());
        model.addAttribute("meanings", Meaning.values());
        model.addAttribute("meant", meant(mapping));
        model.addAttribute("rows", mapping.rows(sheet).stream().limit(SHOWN).toList());
        model.addAttribute("total", mapping.rows(sheet).size());
        model.addAttribute("longer", sheet.longer());
        model.addAttribute("broken", sheet.broken());
        model.addAttribute("mostRows", Sheet.MOST_ROWS);
        model.addAttribute("channels", known.channels());
        model.addAttribute("encodings", said(Encoding.values(), Encoding::messageKey));
        model.addAttribute("delimiters", said(Delimiter.values(), Delimiter::messageKey));
        model.addAttribute("dateForms", said(DateForm.values(), DateForm::messageKey));
        model.addAttribute("numberForms", said(NumberForm.values(), NumberForm::messageKey));
        model.addAttribute(
                "spreads",
                List.of(
                        Choice.said("ONCE", "bringing.spread.ONCE"),
                        Choice.said("EACH_ROW", "bringing.spread.EACH_ROW")));
        Encoding.Guess guess = Encoding.guess(draft.content());
        model.addAttribute("guessed", guess);
        model.addAttribute(
                "unreadable",
                mapping.encoding()
                        .text(draft.content())
                        .chars()
                        .filter(letter -> letter == 0xFFFD)
                        .count());
        model.addAttribute("twoDays", twoDays(mapping, sheet).orElse(null));
        model.addAttribute("twoNumbers", twoNumbers(mapping, sheet).orElse(null));
        return "bringing/mapping";
    }

    private static List<Column> columns(Mapping mapping, Sheet sheet) {
        List<String> head = mapping.head(sheet);
        List<Sheet.Row> rows = mapping.rows(sheet);
        int width = Math.max(head.size(), sheet.width());
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < width; i++) {
            int place = i;
            String example = rows.stream()
                    .limit(SHOWN)
                    .map(row -> row.cell(place))
                    .filter(cell -> !cell.isEmpty())
                    .findFirst()
                    .orElse("");
            columns.add(new Column(i, i < head.size() ? cut(head.get(i)) : "", cut(example)));
        }
        return columns;
    }

    private static Map<Integer, Meaning> meant(Mapping mapping) {
        Map<Integer, Meaning> meant = new TreeMap<>();
        mapping.columns().forEach((meaning, place) -> meant.put(place, meaning));
        return meant;
    }

    private static Optional<TwoDays> twoDays(Mapping mapping, Sheet sheet) {
        return MappingGuess.dates(mapping, sheet).stream()
                .flatMap(text -> DateForm.DAY_MONTH_YEAR.read(text).stream()
                        .flatMap(day -> DateForm.MONTH_DAY_YEAR.read(text).stream()
                                .filter(other -> !other.equals(day))
                                .map(other -> new TwoDays(text, day, other))))
                .findFirst()
                .filter(two -> mapping.dates() == null
                        || mapping.dates() == DateForm.DAY_MONTH_YEAR
                        || mapping.dates() == DateForm.MONTH_DAY_YEAR);
    }

    private static Optional<String> twoNumbers(Mapping mapping, Sheet sheet) {
        return MappingGuess.numbers(mapping, sheet).stream()
                .filter(text -> NumberForm.fitting(List.of(text)).size() > 1 && NumberForm.differ(List.of(text)))
                .findFirst()
                .filter(text -> mapping.numbers() == null);
    }

    private static <E extends Enum<E>> List<Choice> said(E[] words, Function<E, String> key) {
        return Stream.of(words)
                .map(word -> Choice.said(word.name(), key.apply(word)))
                .toList();
    }

    private static String cut(String text) {
        String plain = text.replaceAll("\\s+", " ");
        return plain.length() > EXAMPLE ? plain.substring(0, EXAMPLE - 1) + "…" : plain;
    }
}
