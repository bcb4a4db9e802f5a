package patinary.sending;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/** Reads what went wrong in the mail. */
@Component
class LossAnswers {

    private static final int WORDS = 1000;
    private static final int REFERENCE = 80;

    private final CurrentShop shop;

    LossAnswers(CurrentShop shop) {
        this.shop = shop;
    }

    Answers on(org.springframework.validation.Errors errors) {
        return new Answers(errors, shop.currency());
    }

    /** @param soldOn the day of the sale: nothing of it was lost before */
    Losses.Facts read(LossForm form, LocalDate soldOn, Answers answers) {
        Loss.What what = answers.word("what", form.what, Loss.What.class, "sending.error.what")
                .orElse(Loss.What.LOST);
        LocalDate noticed = answers.date("noticedOn", form.noticedOn);
        String words = answers.note("words", form.words, WORDS);
        Optional<LocalDate> claimedOn = answers.optionalDate("claimedOn", form.claimedOn);
        Optional<Amount> claimed = answers.optionalAmount("claimed", form.claimed);
        String reference = answers.note("reference", form.reference, REFERENCE);
        Optional<LocalDate> refusedOn = answers.optionalDate("refusedOn", form.refusedOn);
        day(answers, "noticedOn", noticed, soldOn);
        claimedOn.ifPresent(day -> day(answers, "claimedOn", day, soldOn));
        refusedOn.ifPresent(day -> day(answers, "refusedOn", day, soldOn));
        claim(form, answers, claimedOn, claimed);
        return new Losses.Facts(what, noticed, words, orNull(claimedOn), orNull(claimed), reference, orNull(refusedOn));
    }

    /** The day is an amount's partner, a refusal follows a claim, and a claim is about something. */
    private static void claim(LossForm form, Answers answers, Optional<LocalDate> claimedOn, Optional<Amount> claimed) {
        if (form.claimed.isBlank() && claimedOn.isPresent()) {
            answers.wrong("claimed", "sending.error.claimed");
        }
        if (form.claimedOn.isBlank() && !form.claimed.isBlank()) {
            answers.wrong("claimedOn", "sending.error.claimed-on");
        }
        if (claimed.filter(amount -> !amount.isPositive()).isPresent()) {
            answers.wrong("claimed", "sending.error.zero");
        }
        if (!form.refusedOn.isBlank() && form.claimedOn.isBlank()) {
            answers.wrong("refusedOn", "sending.error.refused");
        }
    }

    private void day(Answers answers, String field, LocalDate day, LocalDate soldOn) {
        if (!day.equals(LocalDate.EPOCH) && (day.isBefore(soldOn) || day.isAfter(shop.today()))) {
            answers.wrong(field, "sending.error.day");
        }
    }

    private static <T> @Nullable T orNull(Optional<T> value) {
        return value.orElse(null);
    }
}
