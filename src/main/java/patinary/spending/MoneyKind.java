package patinary.spending;

import java.time.LocalDate;
import java.util.Map;
import java.util.UUID;
import org.springframework.ui.Model;
import patinary.ledger.Document;
import patinary.money.Amount;
import patinary.web.Answers;

/** What is its own with one kind of money document: its form, how that is read, and what its page shows. */
abstract class MoneyKind<D extends Document, F extends MoneyForm> {

    private static final int NOTE = 2000;

    final MoneyDesk desk;
    final Class<D> type;
    final String name;

    /** @param name the name of its address, template and messages, for instance {@code owner-money} */
    MoneyKind(MoneyDesk desk, Class<D> type, String name) {
        this.desk = desk;
        this.type = type;
        this.name = name;
    }

    /** An empty form. */
    abstract F blank();

    /** Takes over what the address of an empty form asked for. */
    void prefill(F form, Map<String, String> asked) {
        // Most kinds ask for nothing.
    }

    /** The page that their forms lead back to. */
    String home() {
        return "/expenses";
    }

    /** The form of a stored document, without what all forms share. */
    abstract F form(D document);

    /** The document that the answers describe; harmless where there are errors. */
    abstract D read(Facts facts, F form, Answers answers);

    /** Takes over everything but the id. */
    abstract void rewrite(D stored, D typed);

    /** Puts the choices and hints of this kind on the page. */
    abstract void furnish(Model model, F form);

    /** Why a document cannot be removed, as a message key, or empty. */
    String keeps(UUID id) {
        return "";
    }

    /** What was typed of that which all kinds have. */
    record Facts(UUID id, LocalDate date, String note) {}

    /** An amount above zero. */
    Amount amount(Answers answers, String typed) {
        Amount amount = answers.amount("amount", typed);
        if (!answers.anyWrong() && amount.isZero()) {
            answers.wrong("amount", "spending.error.zero");
        }
        return amount;
    }

    String plain(Amount amount) {
        return desk.shop.currency().plain(amount);
    }

    final Facts facts(UUID id, F form, Answers answers) {
        LocalDate date = answers.date("date", form.date);
        if (!date.equals(LocalDate.EPOCH) && date.isBefore(desk.shop.firstDay())) {
            answers.wrong(
                    "date",
                    "spending.error.before-first-day",
                    desk.shop.firstDay().toString());
        }
        return new Facts(id, date, answers.note("note", form.note, NOTE));
    }
}
