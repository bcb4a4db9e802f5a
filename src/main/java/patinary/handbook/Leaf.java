package patinary.handbook;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import patinary.web.Tongue;

/** One page of the guide or the handbook, in the language that it is written in. */
record Leaf(Shelf shelf, String name, Tongue tongue, String title, List<Block> blocks) {

    static Leaf of(Shelf shelf, String name, Tongue tongue, String markdown, Pictures pictures) {
        List<Block> blocks = Reading.blocks(shelf, Links.asInEnglish(tongue, markdown), pictures);
        String title = blocks.stream()
                .filter(Block.Heading.class::isInstance)
                .map(block -> Run.plain(((Block.Heading) block).runs()))
                .findFirst()
                .orElse(name);
        return new Leaf(shelf, name, tongue, title, blocks);
    }

    /** The same page, with its places named as on the English one. */
    Leaf anchoredAs(Leaf english) {
        return new Leaf(shelf, name, tongue, title, Twins.anchored(blocks, english.blocks));
    }

    public String address() {
        return shelf.address(name);
    }

    /** Every place on it that can be pointed to. */
    Set<String> anchors() {
        Set<String> anchors = new LinkedHashSet<>();
        for (Block block : blocks) {
            if (block instanceof Block.Heading heading) {
                anchors.add(heading.id());
            } else if (block instanceof Block.Paragraph paragraph && paragraph.id() != null) {
                anchors.add(paragraph.id());
            } else if (block instanceof Block.Grid grid) {
                grid.rows().stream().map(Block.Row::id).filter(id -> id != null).forEach(anchors::add);
            }
        }
        return anchors;
    }

    /** Its text, each heading with what stands under it. */
    List<Section> sections() {
        List<Section> sections = new ArrayList<>();
        for (Block block : blocks) {
            if (block instanceof Block.Heading heading) {
                sections.add(new Section(this, heading.id(), Run.plain(heading.runs()), new ArrayList<>()));
            } else if (!sections.isEmpty()) {
                sections.get(sections.size() - 1).lines().addAll(lines(block));
            }
        }
        return sections;
    }

    private static List<String> lines(Block block) {
        if (block instanceof Block.Paragraph paragraph) {
            return List.of(Run.plain(paragraph.runs()));
        }
        if (block instanceof Block.Picture picture) {
            return List.of(picture.words());
        }
        if (block instanceof Block.Formula formula) {
            return formula.text().lines().map(String::strip).toList();
        }
        if (block instanceof Block.Grid grid) {
            return grid.rows().stream()
                    .map(row -> String.join(
                            " · ", row.cells().stream().map(Run::plain).toList()))
                    .toList();
        }
        List<Block> inside = block instanceof Block.Listing listing
                ? listing.items().stream().flatMap(List::stream).toList()
                : block instanceof Block.Quote quote ? quote.blocks() : List.of();
        return inside.stream().flatMap(one -> lines(one).stream()).toList();
    }

    /** A heading, and the lines of text under it. */
    record Section(Leaf leaf, String id, String title, List<String> lines) {

        public boolean first() {
            return leaf.title().equals(title);
        }
    }
}
