package patinary.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import patinary.web.Tongue;

/** The pages of the guide and the handbook as the program packs them. */
class LibraryTest {

    private static final Pattern POINTER = Pattern.compile("/(handbook|guide)/([a-z0-9-]+)(?:#([\\p{L}\\p{N}_-]+))?");

    private final Library library = new Library();

    @Test
    void holdsEveryFileOfTheProject() throws IOException {
        for (Shelf shelf : Shelf.values()) {
            try (Stream<Path> files = Files.list(Path.of("docs", shelf.word()))) {
                assertThat(files.filter(file -> file.toString().endsWith(".md")))
                        .allSatisfy(file -> assertThat(library.leaf(shelf, name(file)))
                                .get()
                                .satisfies(leaf ->
                                        assertThat(Files.readString(file)).startsWith("# " + leaf.title())));
            }
        }
        assertThat(library.leaves()).hasSizeGreaterThan(60);
        assertThat(library.leaf(Shelf.GUIDE, "no-such-page")).isEmpty();
        assertThat(library.example(Shelf.GUIDE, "example-sales")).isPresent();
    }

    @Test
    void everyPageIsInTheListWithItsLine() {
        for (Shelf shelf : Shelf.values()) {
            List<String> listed = links(library.leaf(shelf, Library.LIST).orElseThrow());
            assertThat(library.leaves().stream().filter(leaf -> leaf.shelf() == shelf))
                    .allSatisfy(leaf -> assertThat(listed).contains(leaf.address()));
        }
    }

    @Test
    void everyLinkOfAPageLeadsToAPageAndAPlaceOnIt() {
        List<String> astray = new ArrayList<>();
        Stream.concat(
                        library.leaves().stream(),
                        Stream.of(Shelf.values())
                                .map(shelf -> library.leaf(shelf, Library.LIST).orElseThrow()))
                .forEach(leaf -> links(leaf).stream()
                        .map(link -> link.startsWith("#") ? leaf.address() + link : link)
                        .filter(link -> !leads(link))
                        .forEach(link -> astray.add(leaf.address() + ": " + link)));
        assertThat(astray).isEmpty();
    }

    /** A template names the place of a formula by its address: a heading that is renamed must not leave it pointing nowhere. */
    @Test
    void everyPlaceThatATemplateOrAMessagePointsToIsThere() throws IOException {
        List<String> astray = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/resources"))) {
            for (Path file : files.filter(path -> path.toString().matches(".*\\.(html|properties)"))
                    .toList()) {
                Matcher pointer = POINTER.matcher(Files.readString(file));
                while (pointer.find()) {
                    if (!leads(pointer.group()) && !pointer.group().equals("/handbook/page")) {
                        astray.add(file + ": " + pointer.group());
                    }
                }
            }
        }
        assertThat(astray).isEmpty();
    }

    /** A page in another language says what the English one says: as many headings, steps and rows, the same links and pictures. */
    @Test
    void aPageInAnotherLanguageIsBuiltAsTheEnglishOne() throws IOException {
        for (Shelf shelf : Shelf.values()) {
            try (Stream<Path> files = Files.list(Path.of("docs", shelf.word(), Tongue.SPANISH.code()))) {
                assertThat(files).isNotEmpty().allSatisfy(file -> {
                    Leaf english =
                            library.leaf(shelf, name(file), Tongue.ENGLISH).orElseThrow();
                    Leaf spanish =
                            library.leaf(shelf, name(file), Tongue.SPANISH).orElseThrow();
                    assertThat(built(spanish.blocks())).isEqualTo(built(english.blocks()));
                    assertThat(links(spanish)).isEqualTo(links(english));
                    assertThat(spanish.anchors()).isEqualTo(english.anchors());
                });
            }
        }
    }

    /** The page of the archive names files and columns, whose words are English; the guide says so. */
    @Test
    void everyPageButThatOfTheArchiveIsInTheOtherLanguageToo() {
        assertThat(library.leaves())
                .filteredOn(leaf ->
                        library.leaf(leaf.shelf(), leaf.name(), Tongue.SPANISH).isEmpty())
                .extracting(Leaf::address)
                .containsExactly("/handbook/archive");
    }

    private static List<String> built(List<Block> blocks) {
        return blocks.stream().map(LibraryTest::built).toList();
    }

    private static String built(Block block) {
        if (block instanceof Block.Heading heading) {
            return block.kind() + " " + heading.level();
        }
        if (block instanceof Block.Formula formula) {
            return block.kind() + " " + formula.text().lines().count();
        }
        if (block instanceof Block.Listing listing) {
            return block.kind()
                    + listing.items().stream().map(LibraryTest::built).toList();
        }
        if (block instanceof Block.Quote quote) {
            return block.kind() + built(quote.blocks());
        }
        if (block instanceof Block.Grid grid) {
            return block.kind()
                    + grid.rows().stream().map(row -> row.cells().size()).toList();
        }
        return block instanceof Block.Picture picture ? picture.address() : block.kind();
    }

    /** Where the pages are read as files, a link leads to a file. */
    @Test
    void everyLinkOfAPageLeadsToAFile() throws IOException {
        Pattern link = Pattern.compile("\\]\\(([^)#\\s]+)");
        List<String> astray = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("docs"))) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".md")).toList()) {
                Matcher leads = link.matcher(Files.readString(file));
                while (leads.find()) {
                    if (!leads.group(1).matches("[a-z]+:.*|/.*")
                            && !Files.exists(file.resolveSibling(leads.group(1)))) {
                        astray.add(file + ": " + leads.group(1));
                    }
                }
            }
        }
        assertThat(astray).isEmpty();
    }

    /** A picture that no page shows is of no use; one that is shown has words and is not larger than a page on a slow link bears. */
    @Test
    void everyPictureIsShownAndSaysWhatItIs() throws IOException {
        List<Block.Picture> shown = library.leaves().stream()
                .flatMap(leaf -> leaf.blocks().stream())
                .filter(Block.Picture.class::isInstance)
                .map(Block.Picture.class::cast)
                .toList();
        assertThat(shown).allSatisfy(picture -> {
            assertThat(picture.words()).hasSizeGreaterThan(20);
            assertThat(picture.width()).isGreaterThan(300);
        });
        try (Stream<Path> files = Files.list(Path.of("docs/guide/pictures"))) {
            List<Path> kept =
                    files.filter(file -> file.toString().endsWith(".jpeg")).toList();
            assertThat(shown)
                    .extracting(Block.Picture::address)
                    .containsExactlyInAnyOrderElementsOf(kept.stream()
                            .map(file -> "/guide/" + file.getFileName())
                            .toList());
            assertThat(kept).allSatisfy(file -> assertThat(Files.size(file)).isLessThan(160_000));
        }
    }

    private boolean leads(String link) {
        if (link.equals("/guide") || link.equals("/handbook") || link.equals("/guide/example-sales.csv")) {
            return true;
        }
        Matcher parts = POINTER.matcher(link);
        return parts.matches()
                && library.leaf(parts.group(1).equals("guide") ? Shelf.GUIDE : Shelf.HANDBOOK, parts.group(2))
                        .filter(leaf -> parts.group(3) == null || leaf.anchors().contains(parts.group(3)))
                        .isPresent();
    }

    private static List<String> links(Leaf leaf) {
        return leaf.blocks().stream()
                .flatMap(LibraryTest::runs)
                .map(Run::href)
                .filter(href -> href != null)
                .toList();
    }

    private static Stream<Run> runs(Block block) {
        if (block instanceof Block.Heading heading) {
            return heading.runs().stream();
        }
        if (block instanceof Block.Paragraph paragraph) {
            return paragraph.runs().stream();
        }
        if (block instanceof Block.Grid grid) {
            return grid.rows().stream().flatMap(row -> row.cells().stream()).flatMap(List::stream);
        }
        if (block instanceof Block.Listing listing) {
            return listing.items().stream().flatMap(List::stream).flatMap(LibraryTest::runs);
        }
        return block instanceof Block.Quote quote ? quote.blocks().stream().flatMap(LibraryTest::runs) : Stream.of();
    }

    private static String name(Path file) {
        return file.getFileName().toString().replace(".md", "");
    }
}
