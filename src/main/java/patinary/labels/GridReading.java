package patinary.labels;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import patinary.measure.Dimension;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/** Judges what was typed of a grid: every field by itself, then whether the page holds it. */
@Component
class GridReading {

    private static final int NAME = 60;
    private static final int SCALE = 4;
    private static final BigDecimal MM_PER_CM = BigDecimal.TEN;
    private static final BigDecimal LONGEST = BigDecimal.valueOf(1000);

    private final LabelGrids grids;
    private final CurrentShop shop;

    GridReading(LabelGrids grids, CurrentShop shop) {
        this.grids = grids;
        this.shop = shop;
    }

    Optional<LabelGrid> read(GridForm form, UUID id, Errors errors) {
        Answers answers = new Answers(errors, shop.currency());
        String name = answers.text("name", form.name, NAME, "labels.error.name");
        if (!name.isEmpty() && grids.isTaken(name, id)) {
            answers.wrong("name", "labels.error.name-taken");
        }
        Optional<Paper> paper = answers.word("paper", form.paper, Paper.class, "labels.error.paper");
        BigDecimal width = length(answers, "width", form.width);
        BigDecimal height = length(answers, "height", form.height);
        if (paper.isPresent() && paper.get() == Paper.ROLL) {
            return judged(LabelGrid.roll(width, height), answers);
        }
        LabelGrid grid = new LabelGrid(
                paper.orElse(Paper.A4),
                count(answers, "rows", form.rows),
                count(answers, "columns", form.columns),
                length(answers, "left", form.left),
                length(answers, "top", form.top),
                width,
                height,
                length(answers, "across", form.across),
                length(answers, "down", form.down));
        return judged(grid, answers);
    }

    private static Optional<LabelGrid> judged(LabelGrid grid, Answers answers) {
        if (answers.anyWrong()) {
            return Optional.empty();
        }
        grid.fault().ifPresent(fault -> answers.wrong(field(fault), "labels.error." + fault.name()));
        return answers.anyWrong() ? Optional.empty() : Optional.of(grid);
    }

    private static String field(LabelGrid.Fault fault) {
        return switch (fault) {
            case NOTHING, TOO_WIDE -> "width";
            case TOO_HIGH -> "height";
            case TOO_MANY -> "columns";
        };
    }

    /** Millimetres where no unit is typed; an empty answer is nothing at all. */
    private static BigDecimal length(Answers answers, String field, String typed) {
        if (typed.isBlank()) {
            return BigDecimal.ZERO;
        }
        boolean bare = typed.chars().noneMatch(Character::isLetter) && !typed.contains("\"");
        BigDecimal length = bare
                ? answers.decimal(field, typed, "labels.error.length").orElse(BigDecimal.ZERO)
                : answers.quantity(field, typed, Dimension.LENGTH, List.of())
                        .map(MM_PER_CM::multiply)
                        .orElse(BigDecimal.ZERO);
        if (length.signum() < 0 || length.compareTo(LONGEST) > 0) {
            answers.wrong(field, "labels.error.length");
            return BigDecimal.ZERO;
        }
        return length.setScale(SCALE, RoundingMode.HALF_UP);
    }

    private static int count(Answers answers, String field, String typed) {
        Optional<Integer> count = answers.whole(field, typed).filter(number -> number > 0);
        if (count.isEmpty()) {
            answers.wrong(field, "labels.error.count");
        }
        return count.orElse(1);
    }
}
