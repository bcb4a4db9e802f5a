package patinary.phone;

import java.time.LocalDate;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.http.ResponseEntity;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import patinary.ledger.Books;
import patinary.money.Amount;
import patinary.spending.OwnerMoney;
import patinary.web.NotFound;

/** A page only tests have: it records the smallest of documents, and fails on demand. */
@Controller
@RequestMapping("/probe")
class ProbeController {

    /** The place the money goes to; tests store it. */
    static final UUID PLACE = UUID.fromString("00000000-0000-4000-8000-0000000000aa");

    /** What a test wants to happen in the middle of the work. */
    static volatile Runnable meanwhile = () -> {};

    private final Books books;
    private final JdbcClient jdbc;

    ProbeController(Books books, JdbcClient jdbc) {
        this.books = books;
        this.jdbc = jdbc;
    }

    @GetMapping
    String page(Model model) {
        ProbeForm form = new ProbeForm();
        form.id = UUID.randomUUID().toString();
        model.addAttribute("form", form);
        return "phone/probe";
    }

    @PostMapping(headers = Delivery.KEY)
    ResponseEntity<?> deliver(@ModelAttribute("form") ProbeForm form, BindingResult errors, Delivery delivery) {
        return delivery.once(errors, () -> store(form, errors, delivery));
    }

    /** Takes an entry of any other road; without a key the argument cannot be made. */
    @PostMapping
    ResponseEntity<?> keyless(@ModelAttribute("form") ProbeForm form, BindingResult errors, Delivery delivery) {
        throw new IllegalStateException("never reached");
    }

    private Delivery.@Nullable Stored store(ProbeForm form, BindingResult errors, Delivery delivery) {
        if (form.amount.isEmpty()) {
            errors.rejectValue("amount", "money.error.missing");
            return null;
        }
        if (form.trouble.equals("row")) {
            return row(delivery);
        }
        Amount amount = Amount.of(Long.parseLong(form.amount));
        books.record(new OwnerMoney(
                delivery.key(), LocalDate.parse(form.day), form.note, OwnerMoney.Direction.IN, PLACE, amount));
        meanwhile.run();
        switch (form.trouble) {
            case "late" -> errors.reject("money.error.missing");
            case "missing" -> throw new NotFound("nothing");
            case "stale" -> throw new OptimisticLockingFailureException("on purpose");
            case "bug" -> throw new IllegalStateException("on purpose");
            default -> {}
        }
        return new Delivery.Stored("/owner-money/" + delivery.key(), "web.money.label", form.note, "USD");
    }

    /** Costs next to nothing, and nothing but the key keeps it from being stored twice: the row has an id of its own. */
    private Delivery.Stored row(Delivery delivery) {
        UUID own = UUID.randomUUID();
        jdbc.sql("insert into source (id, name, note, resale_certificate, version) values (?, ?, ?, '', 0)")
                .params(own, own.toString(), delivery.key().toString())
                .update();
        return new Delivery.Stored("/sources", "web.money.label", "a row", "USD");
    }

    static void holdUntil(CountDownLatch inside, CountDownLatch go) {
        meanwhile = () -> {
            inside.countDown();
            try {
                go.await();
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
        };
    }
}
