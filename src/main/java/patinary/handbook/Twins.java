package patinary.handbook;

import java.util.List;
import java.util.function.BinaryOperator;
import java.util.stream.IntStream;

/**
 * Gives the parts of a page in another language the anchors of the English one, by where they stand: an anchor is made of words,
 * and an address that points to a place is written once for all languages. What is built otherwise keeps its own.
 */
final class Twins {

    private Twins() {}

    static List<Block> anchored(List<Block> blocks, List<Block> english) {
        return paired(blocks, english, Twins::anchored);
    }

    private static Block anchored(Block block, Block english) {
        if (block instanceof Block.Heading own && english instanceof Block.Heading twin) {
            return new Block.Heading(own.level(), twin.id(), own.runs());
        }
        if (block instanceof Block.Paragraph own && english instanceof Block.Paragraph twin) {
            return new Block.Paragraph(twin.id(), own.runs());
        }
        if (block instanceof Block.Grid own && english instanceof Block.Grid twin) {
            return new Block.Grid(
                    own.about(),
                    own.heads(),
                    paired(own.rows(), twin.rows(), (row, other) -> new Block.Row(other.id(), row.cells())));
        }
        if (block instanceof Block.Listing own && english instanceof Block.Listing twin) {
            return new Block.Listing(own.numbered(), paired(own.items(), twin.items(), Twins::anchored));
        }
        return block instanceof Block.Quote own && english instanceof Block.Quote twin
                ? new Block.Quote(anchored(own.blocks(), twin.blocks()))
                : block;
    }

    private static <T> List<T> paired(List<T> own, List<T> english, BinaryOperator<T> anchored) {
        return own.size() != english.size()
                ? own
                : IntStream.range(0, own.size())
                        .mapToObj(at -> anchored.apply(own.get(at), english.get(at)))
                        .toList();
    }
}
