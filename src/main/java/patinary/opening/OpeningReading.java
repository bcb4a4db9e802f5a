package patinary.opening;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/** Judges the opening page as a whole; its sections have readers of their own. */
@Component
class OpeningReading {

    private static final int NOTE = 2000;

    private final PieceRowReading pieces;
    private final SupplyRowReading supplies;
    private final BalanceReading balances;
    private final CurrentShop shop;

    OpeningReading(PieceRowReading pieces, SupplyRowReading supplies, BalanceReading balances, CurrentShop shop) {
        this.pieces = pieces;
        this.supplies = supplies;
        this.balances = balances;
        this.shop = shop;
    }

    OpeningDraft read(OpeningForm form, Optional<Opening.Content> stored, Errors errors) {
        Answers answers = new Answers(errors, shop.currency());
        Opening.Content content = new Opening.Content(
                shop.firstDay(),
                answers.note("note", form.note, NOTE),
                odometer(answers, form.odometer),
                answers.optionalAmount("lastClosing", form.lastClosing).orElse(null),
                List.of(),
                supplies.read(
                        form.supplies,
                        answers,
                        stored.map(Opening.Content::supplies).orElse(List.of())),
                balances.read(form, answers));
        return new OpeningDraft(
                content,
                pieces.read(
                        form.pieces,
                        answers,
                        stored.map(Opening.Content::pieces).orElse(List.of()).stream()
                                .map(Opening.OpeningPiece::pieceId)
                                .collect(Collectors.toSet())));
    }

    /** Counters show tenths at most. */
    private static @Nullable BigDecimal odometer(Answers answers, String typed) {
        Optional<BigDecimal> read = answers.decimal("odometer", typed, "opening.error.odometer");
        if (read.filter(OpeningReading::isNoCounter).isPresent()) {
            answers.wrong("odometer", "opening.error.odometer");
        }
        return read.map(value -> value.setScale(1, RoundingMode.HALF_UP)).orElse(null);
    }

    private static boolean isNoCounter(BigDecimal value) {
        return value.signum() < 0 || value.compareTo(new BigDecimal("9999999")) > 0;
    }
}
