package patinary.handbook;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableBody;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.Image;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.parser.Parser;

/** Reads Markdown (CommonMark, with tables) into the parts of a page. */
final class Reading {

    private static final Parser MARKDOWN =
            Parser.builder().extensions(List.of(TablesExtension.create())).build();
    /** The first heading of a table whose rows each define a word. */
    private static final Set<String> DEFINING = Set.of("word", "term", "figure");

    private final Shelf shelf;
    private final Pictures pictures;
    private final Anchors anchors = new Anchors();
    private final Map<Node, String> headings = new IdentityHashMap<>();
    private String under = "";
    private int tables;

    private Reading(Shelf shelf, Pictures pictures) {
        this.shelf = shelf;
        this.pictures = pictures;
    }

    static List<Block> blocks(Shelf shelf, String markdown, Pictures pictures) {
        Reading reading = new Reading(shelf, pictures);
        Node page = MARKDOWN.parse(markdown);
        // Headings choose their names first: those are pointed to from outside too.
        for (Node node : children(page)) {
            if (node instanceof org.commonmark.node.Heading) {
                reading.headings.put(node, reading.anchors.next(Run.plain(reading.runs(node))));
            }
        }
        return reading.all(page);
    }

    private List<Block> all(Node parent) {
        return children(parent).stream().map(this::block).toList();
    }

    private Block block(Node node) {
        if (node instanceof org.commonmark.node.Heading heading) {
            return heading(heading);
        }
        if (node instanceof IndentedCodeBlock code) {
            return new Block.Formula(code.getLiteral().stripTrailing());
        }
        if (node instanceof FencedCodeBlock code) {
            return new Block.Formula(code.getLiteral().stripTrailing());
        }
        if (node instanceof HtmlBlock html) {
            return new Block.Formula(html.getLiteral());
        }
        if (node instanceof ListBlock list) {
            return new Block.Listing(
                    list instanceof OrderedList,
                    children(list).stream().map(this::all).toList());
        }
        if (node instanceof BlockQuote quote) {
            return new Block.Quote(all(quote));
        }
        if (node instanceof TableBlock table) {
            return grid(table);
        }
        return node instanceof Paragraph && node.getFirstChild() instanceof Image image && image.getNext() == null
                ? picture(image)
                : paragraph(runs(node));
    }

    /** A picture stands in a paragraph of its own. */
    private Block picture(Image image) {
        Pictures.Size size = pictures.size(image.getDestination());
        return new Block.Picture(
                Links.picture(shelf, image.getDestination()), Run.plain(runs(image)), size.width(), size.height());
    }

    private Block paragraph(List<Run> runs) {
        boolean aboutAWord = !runs.isEmpty() && runs.get(0).strong();
        return new Block.Paragraph(aboutAWord ? anchors.next(runs.get(0).text()) : null, runs);
    }

    private Block heading(org.commonmark.node.Heading heading) {
        List<Run> runs = runs(heading);
        under = Run.plain(runs);
        return new Block.Heading(heading.getLevel(), headings.getOrDefault(heading, Anchors.slug(under)), runs);
    }

    private Block grid(TableBlock table) {
        tables++;
        List<List<Run>> heads = new ArrayList<>();
        List<Block.Row> rows = new ArrayList<>();
        for (Node part : children(table)) {
            for (Node row : children(part)) {
                List<List<Run>> cells = children(row).stream().map(this::runs).toList();
                if (part instanceof TableHead) {
                    heads.addAll(cells);
                } else if (part instanceof TableBody) {
                    rows.add(new Block.Row(defining(heads) ? anchors.next(Run.plain(cells.get(0))) : null, cells));
                }
            }
        }
        boolean headed = heads.stream().anyMatch(head -> !head.isEmpty());
        return new Block.Grid(tables + ". " + under, headed ? heads : List.of(), rows);
    }

    private static boolean defining(List<List<Run>> heads) {
        return !heads.isEmpty() && DEFINING.contains(Run.plain(heads.get(0)));
    }

    private List<Run> runs(Node around) {
        return Inline.runs(shelf, around);
    }

    private static List<Node> children(Node parent) {
        List<Node> children = new ArrayList<>();
        for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
            children.add(child);
        }
        return children;
    }
}
