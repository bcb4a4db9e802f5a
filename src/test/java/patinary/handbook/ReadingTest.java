package patinary.handbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Markdown as CommonMark 0.31.2 and the tables of GitHub Flavored Markdown (section 4.10) have it, read into parts of a page. The
 * names of places are those that code hosts give to headings: common practice, no standard.
 */
class ReadingTest {

    private static List<Block> read(String markdown) {
        return Reading.blocks(Shelf.HANDBOOK, markdown, picture -> new Pictures.Size(780, 1400));
    }

    @Test
    void aHeadingCanBePointedTo() {
        assertThat(read("# Payment, postage: payout?\n\n## Payment\n\n## Payment"))
                .extracting(block -> ((Block.Heading) block).id())
                .containsExactly("payment-postage-payout", "payment", "payment-1");
    }

    @Test
    void wordsOfASentenceKeepTheirLookAndTheirLink() {
        assertThat(read("A **loss** of `x` is\n*shown*, see [costing `y`](costing.md#uses)."))
                .containsExactly(new Block.Paragraph(
                        null,
                        List.of(
                                new Run("A ", false, false, false, null),
                                new Run("loss", true, false, false, null),
                                new Run(" of ", false, false, false, null),
                                new Run("x", false, false, true, null),
                                new Run(" is ", false, false, false, null),
                                new Run("shown", false, true, false, null),
                                new Run(", see ", false, false, false, null),
                                new Run("costing ", false, false, false, "/handbook/costing#uses"),
                                new Run("y", false, false, true, "/handbook/costing#uses"),
                                new Run(".", false, false, false, null))));
    }

    /** The template shows text as text, so nothing of it is ever an element of the page. */
    @Test
    void markupInAPageIsText() {
        assertThat(read("a <b onclick='x()'>b</b>"))
                .containsExactly(new Block.Paragraph(
                        null, List.of(new Run("a <b onclick='x()'>b</b>", false, false, false, null))));
        assertThat(read("<script>\nx()\n</script>")).containsExactly(new Block.Formula("<script>\nx()\n</script>"));
    }

    @Test
    void aLinkOutOfTheProgramIsItsWordsAlone() {
        for (String target : List.of(
                "../decisions/0003-full-replay.md",
                "../benchmarks.md",
                "javascript:alert(1)",
                "https://example.org",
                "../../src/X.java")) {
            assertThat(Links.of(Shelf.HANDBOOK, target)).as(target).isNull();
        }
        assertThat(Links.of(Shelf.HANDBOOK, "../guide/year.md#files")).isEqualTo("/guide/year#files");
        assertThat(Links.of(Shelf.GUIDE, "../handbook/README.md")).isEqualTo("/handbook");
        assertThat(Links.of(Shelf.GUIDE, "example-sales.csv")).isEqualTo("/guide/example-sales.csv");
        assertThat(Links.of(Shelf.GUIDE, "#here")).isEqualTo("#here");
    }

    @Test
    void aTableHasItsHeadingsAndADefinedWordItsPlace() {
        Block.Grid grid = (Block.Grid) read("## Words\n\n| word | definition |\n|---|---|\n| on offer | `a|b` |\n")
                .get(1);
        assertThat(grid.about()).isEqualTo("1. Words");
        assertThat(grid.label(1)).isEqualTo("definition");
        assertThat(grid.rows())
                .singleElement()
                .satisfies(row -> assertThat(row.id()).isEqualTo("on-offer"));
        Block.Grid bare = (Block.Grid) read("| | |\n|---|---|\n| a | 1 |\n").get(0);
        assertThat(bare.heads()).isEmpty();
        assertThat(bare.label(1)).isNull();
        assertThat(bare.rows().get(0).id()).isNull();
    }

    @Test
    void aParagraphThatBeginsWithItsWordCanBePointedTo() {
        assertThat(read("**Price bands.** A third each.\n\nOf **these**."))
                .extracting(block -> ((Block.Paragraph) block).id())
                .containsExactly("price-bands", null);
    }

    /** An address that points to a place is the same in every language, also inside a list or what is set apart. */
    @Test
    void aPageInAnotherLanguageHasThePlacesOfTheEnglishOne() {
        List<Block> english = read("# Sales\n\n**Fees.** One.\n\n- **Tax.** Two.\n\n> **Tip.** Three.\n\n"
                + "| word | is |\n|---|---|\n| net | 4 |\n\n## Sales");
        List<Block> spanish = read("# Ventas\n\n**Cargos.** Uno.\n\n- **Impuesto.** Dos.\n\n> **Propina.** Tres.\n\n"
                + "| palabra | es |\n|---|---|\n| neto | 4 |\n\n## Ventas");
        assertThat(Twins.anchored(spanish, english))
                .hasToString(spanish.toString()
                        .replace("id=ventas", "id=sales")
                        .replace("id=cargos", "id=fees")
                        .replace("id=impuesto", "id=tax")
                        .replace("id=propina", "id=tip")
                        .replace("Row[id=null", "Row[id=net"));
        assertThat(Twins.anchored(spanish, english.subList(0, 2))).isEqualTo(spanish);
    }

    @Test
    void aPictureStandsAloneAndHasItsSizeAndItsWords() {
        assertThat(Reading.blocks(
                        Shelf.GUIDE, "![A page: buying](pictures/buy.jpeg)", target -> new Pictures.Size(780, 1400)))
                .containsExactly(new Block.Picture("/guide/buy.jpeg", "A page: buying", 780, 1400));
        assertThatThrownBy(() -> read("![](../elsewhere/buy.jpeg)")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void formulasAndListsKeepTheirShape() {
        assertThat(read("    a = b\n      + c\n")).containsExactly(new Block.Formula("a = b\n  + c"));
        Block.Listing list =
                (Block.Listing) read("1. one\n   - inner\n2. two\n").get(0);
        assertThat(list.numbered()).isTrue();
        assertThat(list.items()).hasSize(2);
        assertThat(list.items().get(0).get(1)).isInstanceOf(Block.Listing.class);
    }
}
