package patinary.bringing;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Ids;

/** Reads the mapping page. */
@Component
class MappingAnswers {

    private final KnownGoods known;
    private final CurrentShop shop;

    MappingAnswers(KnownGoods known, CurrentShop shop) {
        this.known = known;
        this.shop = shop;
    }

    /** What can be read of the answers; what cannot is as it was before. */
    Mapping read(MappingForm form, Mapping before, Errors errors) {
        Answers answers = new Answers(errors, shop.currency());
        Optional<UUID> channel = Ids.read(form.channel)
                .filter(id ->
                        known.places().stream().anyMatch(place -> place.id().equals(id)));
        if (channel.isEmpty() && !form.channel.isEmpty()) {
            answers.wrong("channel", "bringing.error.channel");
        }
        int leadIn = answers.whole("leadIn", form.leadIn)
                .filter(rows -> rows < Sheet.MOST_ROWS)
                .orElse(0);
        return new Mapping(
                word(Encoding.values(), form.encoding).orElse(before.encoding()),
                word(Delimiter.values(), form.delimiter).orElse(before.delimiter()),
                leadIn,
                form.header,
                word(DateForm.values(), form.dates).orElse(null),
                word(NumberForm.values(), form.numbers).orElse(null),
                form.spread.equals("EACH_ROW"),
                form.sent,
                channel.orElse(null),
                columns(form, answers));
    }

    /** What has to be said before the rows can be looked at. */
    void check(Mapping mapping, MappingForm form, Errors errors) {
        Answers answers = new Answers(errors, shop.currency());
        missing(mapping.has(Meaning.DATE), field(Meaning.DATE), "bringing.error.no-date-column", answers);
        missing(
                mapping.has(Meaning.PRICE) || mapping.has(Meaning.LINE_TOTAL),
                field(Meaning.PRICE),
                "bringing.error.no-price-column",
                answers);
        missing(mapping.dates() != null, "dates", "bringing.error.no-date-form", answers);
        missing(mapping.numbers() != null, "numbers", "bringing.error.no-number-form", answers);
        missing(
                mapping.channel() != null || errors.hasFieldErrors("channel"),
                "channel",
                "bringing.error.channel",
                answers);
        answers.note("name", form.name, SavedMappings.NAME);
    }

    static String field(Meaning meaning) {
        return "columns[" + meaning.ordinal() + "]";
    }

    private static void missing(boolean there, String field, String message, Answers answers) {
        if (!there) {
            answers.wrong(field, message);
        }
    }

    private static Map<Meaning, Integer> columns(MappingForm form, Answers answers) {
        Map<Meaning, Integer> columns = new EnumMap<>(Meaning.class);
        Map<Integer, Meaning> taken = new HashMap<>();
        for (Meaning meaning : Meaning.values()) {
            String typed = meaning.ordinal() < form.columns.size() ? form.columns.get(meaning.ordinal()) : null;
            Optional<Integer> column = answers.whole(field(meaning), typed).filter(place -> place < Sheet.MOST_COLUMNS);
            column.ifPresent(place -> {
                if (taken.putIfAbsent(place, meaning) != null) {
                    answers.wrong(field(meaning), "bringing.error.column-twice");
                }
                columns.put(meaning, place);
            });
        }
        return columns;
    }

    private static <E extends Enum<E>> Optional<E> word(E[] words, String typed) {
        return Stream.of(words).filter(word -> word.name().equals(typed)).findFirst();
    }
}
