package patinary.opening;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.springframework.stereotype.Component;
import patinary.money.Amount;
import patinary.pieces.NewPieces;
import patinary.web.Answers;

/** Judges the pieces on the opening page. */
@Component
class PieceRowReading {

    private static final int CODE = 20;
    private static final int TITLE = 200;

    private final NewPieces newPieces;

    PieceRowReading(NewPieces newPieces) {
        this.newPieces = newPieces;
    }

    List<OpeningDraft.Piece> read(List<OpeningForm.PieceRow> rows, Answers answers, Set<UUID> stored) {
        List<OpeningDraft.Piece> pieces = new ArrayList<>();
        Set<String> codes = new HashSet<>();
        for (int i = 0; i < rows.size(); i++) {
            OpeningForm.PieceRow row = rows.get(i);
            String at = "pieces[" + i + "].";
            Amount cost = cost(answers, at + "cost", row);
            Optional<UUID> id = answers.optionalId(at + "title", row.pieceId, "opening.error.piece")
                    .filter(stored::contains);
            if (id.isPresent()) {
                pieces.add(new OpeningDraft.Piece(id.get(), "", "", cost, !row.unknown));
                continue;
            }
            String title = answers.text(at + "title", row.title, TITLE, "opening.error.title");
            String code = code(answers, at + "code", row.code, codes);
            pieces.add(new OpeningDraft.Piece(null, code, title, cost, !row.unknown));
        }
        return pieces;
    }

    /** Where the cost is not known it may be left empty, which is nothing. */
    private static Amount cost(Answers answers, String field, OpeningForm.PieceRow row) {
        return row.unknown
                ? answers.optionalAmount(field, row.cost).orElse(Amount.ZERO)
                : answers.amount(field, row.cost);
    }

    private String code(Answers answers, String field, String typed, Set<String> codes) {
        String code = answers.note(field, typed, CODE);
        boolean twice = !code.isEmpty() && !codes.add(code.toLowerCase(Locale.ROOT));
        if (twice || !code.isEmpty() && newPieces.isTaken(code)) {
            answers.wrong(field, "opening.error.code-taken", code);
        }
        return code;
    }
}
