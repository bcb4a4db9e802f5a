package patinary.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import patinary.ledger.Account;
import patinary.money.Amount;
import patinary.web.Answers;
import patinary.web.Choice;

/** Judges the money and the amounts owed on the opening page. */
@Component
class BalanceReading {

    private static final int TITLE = 200;

    private final OpeningChoices choices;

    BalanceReading(OpeningChoices choices) {
        this.choices = choices;
    }

    List<Opening.OpeningBalance> read(OpeningForm form, Answers answers) {
        List<Opening.OpeningBalance> balances = new ArrayList<>();
        Set<String> places = choices.moneyPlaces().keySet();
        for (int i = 0; i < form.money.size(); i++) {
            OpeningForm.MoneyRow row = form.money.get(i);
            // An account may be overdrawn, a card usually is.
            Amount amount =
                    answers.signedAmount("money[" + i + "].amount", row.amount).orElse(Amount.ZERO);
            if (!amount.isZero() && places.contains(row.placeId)) {
                balances.add(new Opening.OpeningBalance(
                        balances.size() + 1, Account.MONEY, UUID.fromString(row.placeId), null, "", amount));
            }
        }
        Set<String> sources = choices.sources().stream().map(Choice::value).collect(Collectors.toSet());
        for (int i = 0; i < form.owed.size(); i++) {
            balances.add(owed(form.owed.get(i), "owed[" + i + "].", balances.size() + 1, answers, sources));
        }
        return balances;
    }

    private static Opening.OpeningBalance owed(
            OpeningForm.OwedRow row, String at, int line, Answers answers, Set<String> sources) {
        Optional<Account> account = answers.word(at + "account", row.account, Account.class, "opening.error.owed");
        if (account.filter(known -> !OpeningChoices.OWED.contains(known)).isPresent()) {
            answers.wrong(at + "account", "opening.error.owed");
        }
        Account known = account.orElse(Account.RECEIVABLE);
        UUID party = party(row, at, known, answers, sources);
        Amount amount = answers.amount(at + "amount", row.amount);
        return new Opening.OpeningBalance(
                line, known, null, party, answers.note(at + "title", row.title, TITLE), amount);
    }

    /** Credit is held at one source; what she owes may name one. */
    private static @Nullable UUID party(
            OpeningForm.OwedRow row, String at, Account account, Answers answers, Set<String> sources) {
        boolean takesOne = account == Account.STORE_CREDIT_HELD || account == Account.PAYABLE;
        boolean chosen = sources.contains(row.partyId);
        if (account == Account.STORE_CREDIT_HELD && !chosen) {
            answers.wrong(at + "partyId", "opening.error.source");
        }
        return takesOne && chosen ? UUID.fromString(row.partyId) : null;
    }
}
