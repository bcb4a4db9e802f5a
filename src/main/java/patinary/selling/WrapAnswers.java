package patinary.selling;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import patinary.supplies.SupplyCatalog;
import patinary.web.Answers;

/** Reads what a sale was packed in, in her measures as they were on that day; the same reading as at the bench. */
@Component
class WrapAnswers {

    private static final int TYPED = 80;

    private final WrapSupplies supplies;

    WrapAnswers(WrapSupplies supplies) {
        this.supplies = supplies;
    }

    /** The rows that say anything; to be used only where {@code answers} found nothing wrong. */
    List<Wrap> read(List<WrapLine> lines, Answers answers, LocalDate day) {
        if (lines.stream().allMatch(WrapLine::isEmpty)) {
            return List.of();
        }
        Map<UUID, SupplyCatalog.Known> known =
                supplies.all().stream().collect(Collectors.toMap(SupplyCatalog.Known::id, Function.identity()));
        List<Wrap> read = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isEmpty()) {
                wrap(lines.get(i), "wraps[" + i + "].", read.size() + 1, answers, known, day)
                        .ifPresent(read::add);
            }
        }
        return List.copyOf(read);
    }

    private static Optional<Wrap> wrap(
            WrapLine line,
            String at,
            int number,
            Answers answers,
            Map<UUID, SupplyCatalog.Known> known,
            LocalDate day) {
        UUID id = answers.id(at + "supply", line.supply, "selling.error.wrap-supply");
        String typed = answers.note(at + "quantity", line.quantity, TYPED);
        SupplyCatalog.Known supply = known.get(id);
        if (supply == null) {
            if (!line.supply.isBlank()) {
                answers.wrong(at + "supply", "selling.error.wrap-supply");
            }
            return Optional.empty();
        }
        Optional<BigDecimal> quantity =
                answers.quantity(at + "quantity", typed, supply.facts().dimension(), supply.measuresOn(day));
        if (quantity.filter(read -> read.signum() <= 0).isPresent()) {
            answers.wrong(at + "quantity", "selling.error.wrap-nothing");
        }
        return quantity.map(read -> new Wrap(number, id, typed, read, line.byEye));
    }
}
