package patinary.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import patinary.web.Tongue;

class SearchTest {

    private static final Pictures NO_PICTURES = target -> {
        throw new IllegalArgumentException(target);
    };

    private final List<Leaf> leaves = List.of(
            Leaf.of(
                    Shelf.GUIDE,
                    "selling",
                    Tongue.ENGLISH,
                    "# Selling\n\nA price and a fee.\n\n## Giving money back\n\nThe fee stays.\n",
                    NO_PICTURES),
            Leaf.of(
                    Shelf.HANDBOOK,
                    "fees",
                    Tongue.ENGLISH,
                    "# Fees\n\n| word | rule |\n|---|---|\n| fee | of the price |\n",
                    NO_PICTURES));

    @Test
    void findsSectionsWithAllTheWordsThoseOfAHeadingFirst() {
        assertThat(Search.hits("FEE", leaves))
                .extracting(Search.Hit::address)
                .containsExactly("/handbook/fees", "/guide/selling", "/guide/selling#giving-money-back");
        assertThat(Search.hits("price fee", leaves))
                .extracting(Search.Hit::extract)
                .containsExactly("A price and a fee.", "fee · of the price");
        assertThat(Search.hits("giving selling", leaves)).isEmpty();
        assertThat(Search.hits("  ", leaves)).isEmpty();
    }

    @Test
    void anAccentCanBeLeftOutWhileAnotherLetterCannot() {
        List<Leaf> spanish = List.of(
                Leaf.of(Shelf.HANDBOOK, "year", Tongue.SPANISH, "# Años\n\nCómo se calcula un año.\n", NO_PICTURES));
        assertThat(Search.hits("COMO año", spanish)).hasSize(1);
        assertThat(Search.hits("cómo", spanish)).hasSize(1);
        assertThat(Search.hits("ano", spanish)).isEmpty();
    }

    @Test
    void aLongLineIsCutAroundTheWord() {
        String before = "filling ".repeat(60);
        Leaf leaf = Leaf.of(
                Shelf.GUIDE,
                "long",
                Tongue.ENGLISH,
                "# Long\n\n" + before + "needle" + " filling".repeat(60),
                NO_PICTURES);
        assertThat(Search.hits("needle", List.of(leaf)))
                .singleElement()
                .satisfies(hit -> assertThat(hit.extract())
                        .contains("needle")
                        .startsWith("… ")
                        .endsWith(" …")
                        .hasSizeLessThan(190));
    }
}
