package patinary.spending;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import patinary.money.Amount;
import patinary.money.ShopCurrency;
import patinary.spending.TillCountForm.Heap;
import patinary.web.Answers;

/** Reads what was counted: the heaps, or the total where no heap is filled in; where both are, they must agree. */
final class TillReader {

    private final Answers answers;
    private final ShopCurrency currency;

    TillReader(Answers answers, ShopCurrency currency) {
        this.answers = answers;
        this.currency = currency;
    }

    Amount read(TillCountForm form) {
        Optional<Amount> heaps = heaps(form.heaps);
        Optional<Amount> total = answers.optionalAmount("counted", form.counted);
        if (heaps.isPresent() && total.isPresent() && !heaps.equals(total)) {
            answers.wrong("counted", "spending.error.heaps", currency.plain(heaps.get()));
        }
        if (heaps.isEmpty() && form.counted.isBlank()) {
            answers.wrong("counted", "spending.error.counted");
        }
        return heaps.or(() -> total).orElse(Amount.ZERO);
    }

    private Optional<Amount> heaps(List<Heap> typed) {
        List<TillSum.Heap> heaps = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            Heap heap = typed.get(i);
            Optional<Integer> number = answers.whole("heaps[" + i + "].number", heap.number);
            Optional<Integer> value = answers.whole("heaps[" + i + "].number", heap.minor);
            if (number.isPresent() && value.isPresent()) {
                heaps.add(new TillSum.Heap(Amount.of(value.get()), number.get()));
            }
        }
        return heaps.isEmpty() ? Optional.empty() : Optional.of(TillSum.of(heaps));
    }
}
