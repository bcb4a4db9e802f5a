package patinary.spending;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.money.Amount;
import patinary.money.Denominations;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.Ids;

/** What the pages ask and show of a count of the cash box. */
@Component
class TillCountKind extends MoneyKind<TillCount, TillCountForm> {

    private final TillBooks till;
    private final Denominations denominations = Denominations.load();

    TillCountKind(MoneyDesk desk, TillBooks till) {
        super(desk, TillCount.class, "till-counts");
        this.till = till;
    }

    @Override
    String home() {
        return "/till";
    }

    @Override
    TillCountForm blank() {
        TillCountForm form = new TillCountForm();
        List<TillBooks.Box> boxes = till.boxes();
        form.placeId = boxes.size() == 1 ? boxes.get(0).id().toString() : "";
        return form;
    }

    @Override
    void prefill(TillCountForm form, Map<String, String> asked) {
        form.placeId = asked.getOrDefault("placeId", form.placeId);
        form.date = asked.getOrDefault("date", form.date);
    }

    @Override
    TillCountForm form(TillCount count) {
        TillCountForm form = new TillCountForm();
        form.placeId = count.placeId().toString();
        form.counted = plain(count.counted());
        return form;
    }

    @Override
    TillCount read(Facts facts, TillCountForm form, Answers answers) {
        UUID place = desk.place(answers, "placeId", form.placeId);
        if (facts.date().isAfter(desk.shop.today())) {
            answers.wrong("date", "spending.error.future-count");
        }
        if (till.countedAlready(place, facts.date(), facts.id())) {
            answers.wrong("date", "spending.error.counted-already");
        }
        Amount counted = new TillReader(answers, desk.shop.currency()).read(form);
        return new TillCount(facts.id(), facts.date(), facts.note(), place, counted);
    }

    @Override
    void rewrite(TillCount stored, TillCount typed) {
        stored.rewrite(typed.date(), typed.note(), typed.placeId(), typed.counted());
    }

    /** The heaps to fill in, and what the books say must be there at the end of the day. */
    @Override
    void furnish(Model model, TillCountForm form) {
        LocalDate day = day(form.date).orElseGet(desk.shop::today);
        if (form.heaps.isEmpty()) {
            denominations.on(day, desk.shop.currency()).stream()
                    .map(Denominations.Denomination::value)
                    .distinct()
                    .forEach(value -> form.heaps.add(heap(value)));
        }
        model.addAttribute(
                "worths", form.heaps.stream().map(TillCountKind::worth).toList());
        model.addAttribute("digits", desk.shop.currency().digits());
        List<Choice> boxes = till.boxes().stream()
                .map(box -> Choice.named(box.id().toString(), box.name()))
                .toList();
        model.addAttribute("boxes", boxes);
        Ids.read(form.placeId)
                .flatMap(place -> boxes.stream()
                        .filter(box -> box.value().equals(place.toString()))
                        .findFirst())
                .ifPresent(box -> {
                    model.addAttribute("box", box.text());
                    model.addAttribute("day", till.day(UUID.fromString(box.value()), day));
                    model.addAttribute("counting", day);
                });
    }

    /** A note and a coin of one value are counted together. */
    private static TillCountForm.Heap heap(Amount value) {
        TillCountForm.Heap heap = new TillCountForm.Heap();
        heap.minor = String.valueOf(value.minor());
        return heap;
    }

    private static Amount worth(TillCountForm.Heap heap) {
        try {
            return Amount.of(Long.parseLong(heap.minor));
        } catch (NumberFormatException tampered) {
            return Amount.ZERO;
        }
    }

    private static Optional<LocalDate> day(String typed) {
        try {
            return Optional.of(LocalDate.parse(typed));
        } catch (DateTimeParseException unreadable) {
            return Optional.empty();
        }
    }
}
