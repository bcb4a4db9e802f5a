package patinary.selling;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.validation.BindingResult;
import org.springframework.validation.DirectFieldBindingResult;
import org.springframework.validation.FieldError;
import org.springframework.validation.ObjectError;
import patinary.ledger.Books;
import patinary.ledger.Problem;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;

/**
 * Many sales at once, all or none. Each is read by the rules of the form of one sale, and the books are derived once for all
 * of them.
 */
@Service
public class ManySales {

    /**
     * A line as it would be typed: pieces by their codes, or a supply from the retail shelf. Amounts are plain decimals of
     * the shop's currency.
     */
    public record Line(
            String title,
            String codes,
            String supply,
            String content,
            String quantity,
            String price,
            String discount) {}

    /**
     * A sale as it would be typed.
     *
     * @param fee empty: by the channel's rule
     * @param sent whether it was sent on its day
     */
    public record Typed(
            UUID id,
            LocalDate date,
            UUID channel,
            String buyer,
            String order,
            String note,
            String discount,
            String shipping,
            String tax,
            String fee,
            boolean sent,
            List<Line> lines) {}

    /**
     * Why it cannot be.
     *
     * @param sale the sale it is about; where it is about another document, that document
     * @param line the line it is about, from 0, or -1
     * @param field the field of the sale's form, or empty
     * @param key the key of the message
     * @param arguments what fills its gaps
     */
    public record Fault(UUID sale, int line, String field, String key, List<Object> arguments) {}

    /** The key of what is said of a piece that has left already. */
    public static final String SOLD_TWICE = Problem.Reason.PIECE_ALREADY_GONE.messageKey();

    private static final UUID NONE = new UUID(0, 0);
    private static final Pattern LINE = Pattern.compile("lines\\[(\\d{1,4})]");

    private final SaleAnswers reader;
    private final SaleFilling filling;
    private final SaleGuard guard;
    private final Books books;
    private final Refusal refusal;
    private final TransactionTemplate transaction;

    ManySales(
            SaleAnswers reader,
            SaleFilling filling,
            SaleGuard guard,
            Books books,
            Refusal refusal,
            TransactionTemplate transaction) {
        this.reader = reader;
        this.filling = filling;
        this.guard = guard;
        this.books = books;
        this.refusal = refusal;
        this.transaction = transaction;
    }

    /** Finds out what would stand against recording them, and stores nothing. */
    public List<Fault> tryOut(List<Typed> sales) {
        return work(sales, true);
    }

    /** Records them all, or none where there is a fault; then a surrounding transaction is rolled back as well. */
    public List<Fault> record(List<Typed> sales) {
        return work(sales, false);
    }

    /** Removes them all, or none where something rests on one of them or its year is sealed. */
    public List<Fault> undo(Collection<UUID> ids) {
        return allOrNothing(false, () -> {
            List<Fault> faults = new ArrayList<>();
            List<Sale> sales = new ArrayList<>();
            for (UUID id : ids) {
                books.find(Sale.class, id).ifPresent(sales::add);
                if (guard.followers(id) > 0) {
                    faults.add(new Fault(id, -1, "", "selling.error.followers", List.of()));
                }
            }
            return faults.isEmpty() ? refusals(Map.of(), () -> books.removeAll(sales)) : faults;
        });
    }

    private List<Fault> work(List<Typed> sales, boolean onlyTry) {
        return allOrNothing(onlyTry, () -> {
            List<Fault> faults = new ArrayList<>();
            List<Sale> read = new ArrayList<>();
            Map<UUID, UUID> saleOfPiece = new HashMap<>();
            for (Typed typed : sales) {
                read(typed, faults).ifPresent(sale -> {
                    read.add(sale);
                    sale.content().pieces().forEach(piece -> saleOfPiece.put(piece.pieceId(), sale.id()));
                });
            }
            if (faults.isEmpty() || onlyTry) {
                faults.addAll(refusals(saleOfPiece, () -> books.recordAll(read)));
            }
            return faults;
        });
    }

    private List<Fault> allOrNothing(boolean onlyTry, Supplier<List<Fault>> work) {
        List<Fault> faults = transaction.execute(status -> {
            books.hold();
            List<Fault> found = work.get();
            if (onlyTry || !found.isEmpty()) {
                status.setRollbackOnly();
            }
            return found;
        });
        return faults == null ? List.of() : faults;
    }

    private Optional<Sale> read(Typed typed, List<Fault> faults) {
        SaleForm form = form(typed);
        BindingResult errors = new DirectFieldBindingResult(form, "sale");
        Optional<SaleContent> content = reader.read(form, errors, typed.id(), null);
        for (ObjectError error : errors.getAllErrors()) {
            String field = error instanceof FieldError one ? one.getField() : "";
            faults.add(fault(typed.id(), field, error));
        }
        return content.filter(read -> !errors.hasErrors()).map(read -> {
            Sale sale = new Sale(typed.id(), read);
            sale.posted(typed.sent() ? typed.date() : null);
            return sale;
        });
    }

    private SaleForm form(Typed typed) {
        SaleForm form = filling.blank();
        form.date = typed.date().toString();
        form.channel = typed.channel().toString();
        form.buyer = typed.buyer();
        form.order = typed.order();
        form.note = typed.note();
        form.discount = typed.discount();
        form.shipping = typed.shipping();
        form.tax = typed.tax();
        form.taxPlace = SaleTax.NONE;
        form.fee = typed.fee();
        for (Line typedLine : typed.lines()) {
            SaleForm.Line line = new SaleForm.Line();
            line.title = typedLine.title();
            line.codes = typedLine.codes();
            line.supply = typedLine.supply();
            line.content = typedLine.content();
            line.quantity = typedLine.quantity();
            line.price = typedLine.price();
            line.discount = typedLine.discount();
            form.lines.add(line);
        }
        return form;
    }

    /** What the books say against it; a piece that another document has taken is a fault of the sale that wants it too. */
    private List<Fault> refusals(Map<UUID, UUID> saleOfPiece, Runnable change) {
        try {
            change.run();
            return List.of();
        } catch (Refused refused) {
            BindingResult words = new DirectFieldBindingResult(new SaleForm(), "sale");
            refusal.tell(words, refused);
            List<Fault> faults = new ArrayList<>();
            for (int i = 0; i < refused.problems().size(); i++) {
                Problem problem = refused.problems().get(i);
                UUID sale = saleOfPiece.getOrDefault(
                        Optional.ofNullable(problem.subject()).orElse(NONE),
                        problem.document().id());
                faults.add(fault(sale, "", words.getGlobalErrors().get(i)));
            }
            return faults;
        }
    }

    private static Fault fault(UUID sale, String field, ObjectError error) {
        Matcher line = LINE.matcher(field);
        Object[] arguments = error.getArguments();
        return new Fault(
                sale,
                line.lookingAt() ? Integer.parseInt(line.group(1)) : -1,
                field,
                String.valueOf(error.getCode()),
                arguments == null ? List.of() : List.of(arguments));
    }
}
