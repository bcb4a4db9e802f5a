package patinary.handbook;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.jspecify.annotations.Nullable;

/** The text inside a paragraph, a heading or a cell as runs. Markup that somebody typed is text like any other. */
final class Inline extends AbstractVisitor {

    private final Shelf shelf;
    private final List<Run> runs = new ArrayList<>();
    private boolean strong;
    private boolean leaning;
    private @Nullable String href;

    private Inline(Shelf shelf) {
        this.shelf = shelf;
    }

    static List<Run> runs(Shelf shelf, Node around) {
        Inline inline = new Inline(shelf);
        inline.visitChildren(around);
        return List.copyOf(inline.runs);
    }

    @Override
    public void visit(Text text) {
        add(text.getLiteral(), false);
    }

    @Override
    public void visit(Code code) {
        add(code.getLiteral(), true);
    }

    @Override
    public void visit(HtmlInline html) {
        add(html.getLiteral(), false);
    }

    @Override
    public void visit(SoftLineBreak end) {
        add(" ", false);
    }

    @Override
    public void visit(HardLineBreak end) {
        add(" ", false);
    }

    @Override
    public void visit(StrongEmphasis emphasis) {
        boolean before = strong;
        strong = true;
        visitChildren(emphasis);
        strong = before;
    }

    @Override
    public void visit(Emphasis emphasis) {
        boolean before = leaning;
        leaning = true;
        visitChildren(emphasis);
        leaning = before;
    }

    @Override
    public void visit(Link link) {
        href = Links.of(shelf, link.getDestination());
        visitChildren(link);
        href = null;
    }

    /** One run as long as nothing changes, so that the words of a link are one link. */
    private void add(String text, boolean code) {
        Run run = new Run(text, strong, leaning, code, href);
        Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
        if (last != null && last.equals(new Run(last.text(), strong, leaning, code, href))) {
            runs.set(runs.size() - 1, new Run(last.text() + text, strong, leaning, code, href));
        } else {
            runs.add(run);
        }
    }
}
