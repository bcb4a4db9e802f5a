package patinary.bench;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import patinary.bench.NowRows.WordsRow;
import patinary.phone.PhoneList;

/** What the bench page needs on a phone without reception. */
@Configuration(proxyBeanMethods = false)
class NowLists {

    /** More than a bench holds; a shop of thousands must still fit into a phone. */
    private static final int PIECES = 200;

    private record Named(String name, Supplier<List<?>> read) implements PhoneList {

        @Override
        public Object rows() {
            return read.get();
        }
    }

    @Bean
    PhoneList benchPieces(NowChoices choices) {
        return new Named("bench-pieces", () -> choices.pieces("", List.of(), PIECES));
    }

    @Bean
    PhoneList benchSupplies(NowChoices choices) {
        return new Named("bench-supplies", choices::supplies);
    }

    @Bean
    PhoneList benchStyles(NowPast past) {
        return new Named("bench-styles", past::styles);
    }

    @Bean
    PhoneList benchPhrases(NowChoices choices) {
        return new Named("phrases", choices::phrases);
    }

    @Bean
    PhoneList benchSurfaces(NowPast past) {
        return new Named("bench-surfaces", () -> words(past.surfaces()));
    }

    @Bean
    PhoneList benchMishaps(NowPast past) {
        return new Named("bench-mishaps", () -> words(past.mishaps()));
    }

    /** The texts of the cautions that a tap may call up. */
    @Bean
    PhoneList benchCautions(NowChoices choices) {
        return new Named("bench-cautions", () -> {
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
