package patinary.pieces;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Ids;

/** Judges what was typed to join or split pieces. */
@Component
class RegroupingReading {

    private static final int TITLE = 200;
    private static final int NOTE = 2000;
    private static final int FEWEST = 2;

    private final Pieces pieces;
    private final PieceDesk desk;
    private final CurrentShop shop;

    RegroupingReading(Pieces pieces, PieceDesk desk, CurrentShop shop) {
        this.pieces = pieces;
        this.desk = desk;
        this.shop = shop;
    }

    RegroupingPlan join(JoinForm form, Errors errors) {
        Answers answers = new Answers(errors, shop.currency());
        LocalDate date = Days.read(answers, form.date, shop);
        List<UUID> from = form.pieces.stream()
                .flatMap(text -> Ids.read(text).stream())
                .distinct()
                .filter(id -> pieces.findById(id).isPresent())
                .toList();
        if (from.size() < FEWEST) {
            answers.wrong("pieces", "pieces.error.join-two");
        }
        Optional<UUID> into = answers.optionalId("into", form.into, "pieces.error.into");
        if (into.filter(id -> !from.contains(id)).isPresent()) {
            answers.wrong("into", "pieces.error.into");
        }
        String title =
                into.isPresent() ? form.title : answers.text("title", form.title, TITLE, "pieces.error.join-title");
        RegroupingPlan.Part part = new RegroupingPlan.Part(
                into.orElse(null), title, from.isEmpty() ? null : facts(from.get(0)), BigDecimal.ONE);
        return new RegroupingPlan(own(form.id), date, answers.note("note", form.note, NOTE), from, List.of(part));
    }

    /** Weights are all typed or all left empty, which means like shares. */
    RegroupingPlan split(UUID piece, SplitForm form, Errors errors) {
        Answers answers = new Answers(errors, shop.currency());
        LocalDate date = Days.read(answers, form.date, shop);
        form.parts.removeIf(part -> part.title.isBlank() && part.weight.isBlank());
        if (form.parts.size() < FEWEST) {
            answers.wrong("", "pieces.error.split-two");
        }
        boolean weighed = form.parts.stream().anyMatch(part -> !part.weight.isBlank());
        List<RegroupingPlan.Part> parts = new ArrayList<>();
        for (int i = 0; i < form.parts.size(); i++) {
            String title = answers.text("parts[" + i + "].title", form.parts.get(i).title, TITLE, "pieces.error.title");
            BigDecimal weight =
                    weighed ? weight(answers, "parts[" + i + "].weight", form.parts.get(i).weight) : BigDecimal.ONE;
            parts.add(new RegroupingPlan.Part(null, title, facts(piece), weight));
        }
        return new RegroupingPlan(own(form.id), date, answers.note("note", form.note, NOTE), List.of(piece), parts);
    }

    private static BigDecimal weight(Answers answers, String field, String typed) {
        Optional<BigDecimal> weight = answers.decimal(field, typed, "pieces.error.weight");
        if (typed.isBlank() || weight.filter(value -> value.signum() < 0).isPresent()) {
            answers.wrong(field, "pieces.error.weight");
        }
        return weight.orElse(BigDecimal.ONE);
    }

    private Piece.Facts facts(UUID id) {
        return desk.read(id).facts();
    }

    private static UUID own(String typed) {
        return Ids.read(typed).orElseGet(UUID::randomUUID);
    }
}
