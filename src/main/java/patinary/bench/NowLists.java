package patinary.bench;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import patinary.bench.NowRows.WordsRow;
import patinary.phone.PhoneList;

/** What the bench page needs on a phone without reception. */
@Configuration(proxyBeanMethods = false)
class NowLists {

    /** More than a bench holds; a shop of thousands must still fit into a phone. */
    private static final int PIECES = 200;

    @Bean
    PhoneList benchPieces(NowChoices choices) {
        return PhoneList.of("bench-pieces", () -> choices.pieces("", List.of(), PIECES));
    }

    @Bean
    PhoneList benchSupplies(NowChoices choices) {
        return PhoneList.of("bench-supplies", choices::supplies);
    }

    @Bean
    PhoneList benchStyles(NowPast past) {
        return PhoneList.of("bench-styles", past::styles);
    }

    @Bean
    PhoneList benchPhrases(NowChoices choices) {
        return PhoneList.of("phrases", choices::phrases);
    }

    @Bean
    PhoneList benchSurfaces(NowPast past) {
        return PhoneList.of("bench-surfaces", () -> words(past.surfaces()));
    }

    @Bean
    PhoneList benchMishaps(NowPast past) {
        return PhoneList.of("bench-mishaps", () -> words(past.mishaps()));
    }

    /** The texts of the cautions that a tap may call up. */
    @Bean
    PhoneList benchCautions(NowChoices choices) {
        return PhoneList.of("bench-cautions", () -> {
            Set<String> ids = new LinkedHashSet<>();
            choices.pieces("", List.of(), PIECES).forEach(row -> ids.addAll(row.cautions()));
            choices.supplies().forEach(row -> ids.addAll(row.cautions()));
            choices.phrases().forEach(row -> ids.addAll(row.cautions()));
            return choices.cautions(ids);
        });
    }

    private static List<WordsRow> words(List<String> texts) {
        return texts.stream().map(text -> new WordsRow(text, List.of())).toList();
    }
}
