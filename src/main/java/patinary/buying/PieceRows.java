package patinary.buying;

import java.util.stream.Stream;
import patinary.buying.ReceiptForm.LineForm;
import patinary.buying.ReceiptForm.PieceForm;

/** The rows for the pieces of one line, shown once she wants to name them or give them values. */
final class PieceRows {

    /** As many pieces as one line may bring; more would not fit a page. */
    static final int MOST = 200;

    private PieceRows() {}

    /** One row for each piece the line brings, or one more. */
    static void add(LineForm line) {
        int rows = line.pieces.isEmpty() ? LineReader.pieceCount(line) : 1;
        Stream.generate(() -> row(line))
                .limit(Math.min(rows, MOST - line.pieces.size()))
                .forEach(line.pieces::add);
        line.pieceCount = "";
    }

    static void remove(LineForm line, int row) {
        if (row >= 0 && row < line.pieces.size()) {
            line.pieces.remove(row);
        }
    }

    private static PieceForm row(LineForm line) {
        PieceForm piece = new PieceForm();
        piece.title = line.title;
        return piece;
    }
}
