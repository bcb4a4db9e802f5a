package patinary.pieces;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/** Judges what was typed of a piece. */
@Component
class PieceReading {

    /** The facts as typed, and the names that are to be added to her lists; empty where none is. */
    record Typed(
            Piece.Facts facts,
            String newKind,
            String newStyle,
            @Nullable UUID finishId,
            @Nullable MeasuredShape shape) {}

    private static final int CODE = 20;
    private static final int TITLE = 200;
    private static final int WORD = 60;
    private static final int NOTE = 2000;
    private static final int MOST_TAGS = 30;

    private final Pieces pieces;
    private final OwnLists lists;
    private final PlannedFinishes finishes;
    private final CurrentShop shop;

    PieceReading(Pieces pieces, OwnLists lists, PlannedFinishes finishes, CurrentShop shop) {
        this.pieces = pieces;
        this.lists = lists;
        this.finishes = finishes;
        this.shop = shop;
    }

    Typed read(PieceForm form, PieceDesk.Stored piece, Errors errors) {
        Piece.Facts stored = piece.facts();
        Answers answers = new Answers(errors, shop.currency());
        SurfaceReading.Surface surface =
                new SurfaceReading(answers, piece.surface()).read(form.area, form.shape, form.measures);
        Piece.Facts facts = new Piece.Facts(
                code(answers, form.code, stored.code()),
                answers.text("title", form.title, TITLE, "pieces.error.title"),
                chosen(answers, OwnList.KINDS, "kind", form.kind),
                chosen(answers, OwnList.STYLES, "style", form.style),
                answers.note("material", form.material, WORD),
                surface.area(),
                answers.note("place", form.place, WORD),
                answers.note("note", form.note, NOTE),
                tags(answers, form.tags));
        return new Typed(
                facts,
                answers.note("newKind", form.newKind, OwnListController.NAME),
                answers.note("newStyle", form.newStyle, OwnListController.NAME),
                finish(answers, form.finish, piece.finishId()),
                surface.shape());
    }

    private String code(Answers answers, String typed, String own) {
        String code = answers.text("code", typed, CODE, "pieces.error.code");
        if (!code.equalsIgnoreCase(own) && pieces.existsByCodeIgnoreCase(code)) {
            answers.wrong("code", "pieces.error.code-taken", code);
        }
        return code;
    }

    private @Nullable UUID chosen(Answers answers, OwnList list, String field, String typed) {
        Optional<UUID> id = answers.optionalId(field, typed, "pieces.error.choice");
        if (id.isPresent() && lists.find(list, id.get()).isEmpty()) {
            answers.wrong(field, "pieces.error.choice");
        }
        return id.orElse(null);
    }

    private @Nullable UUID finish(Answers answers, String typed, @Nullable UUID stored) {
        Optional<UUID> id = answers.optionalId("finish", typed, "pieces.error.choice");
        if (id.isPresent() && !id.get().equals(stored) && !finishes.isThere(id.get())) {
            answers.wrong("finish", "pieces.error.choice");
        }
        return id.orElse(null);
    }

    private static List<String> tags(Answers answers, String typed) {
        List<String> tags = Stream.of(typed.split("[,\\n]"))
                .map(String::strip)
                .filter(tag -> !tag.isEmpty())
                .distinct()
                .toList();
        if (tags.size() > MOST_TAGS) {
            answers.wrong("tags", "pieces.error.tags", MOST_TAGS);
        }
        tags.forEach(tag -> answers.note("tags", tag, WORD));
        return tags;
    }
}
