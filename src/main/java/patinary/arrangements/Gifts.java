package patinary.arrangements;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.Errors;
import patinary.ledger.Books;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.measure.Dimension;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.supplies.SupplyCatalog;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.Ids;
import patinary.web.NotFound;

/** Supplies that came free: recording them, and the list for whoever asks what they were worth. */
@Service
class Gifts {

    /** A supply that came free. */
    record Row(
            UUID id,
            LocalDate docDate,
            String giver,
            UUID supplyId,
            String supply,
            Dimension dimension,
            BigDecimal quantity,
            long valueMinor,
            boolean forWork,
            String note) {}

    private final Books books;
    private final SupplyCatalog supplies;
    private final CurrentShop shop;
    private final Refusal refusal;
    private final JdbcClient jdbc;

    Gifts(Books books, SupplyCatalog supplies, CurrentShop shop, Refusal refusal, JdbcClient jdbc) {
        this.books = books;
        this.supplies = supplies;
        this.shop = shop;
        this.refusal = refusal;
        this.jdbc = jdbc;
    }

    /** All of them, the latest first. */
    @Transactional(readOnly = true)
    public List<Row> all() {
        return jdbc.sql("""
                        select g.id, d.doc_date, g.giver, g.supply_id, l.name || ': ' || s.name as supply, s.dimension, g.quantity,
                               g.value_minor, g.for_work, d.note
                        from supply_gift g
                        join document d on d.id = g.id
                        join supply s on s.id = g.supply_id
                        join supply_line l on l.id = s.supply_line_id
                        order by d.doc_date desc, d.id""").query(Row.class).list();
    }

    @Transactional(readOnly = true)
    public List<Choice> supplies() {
        return supplies.toBuy().stream().map(SupplyCatalog.Known::choice).toList();
    }

    /** Records it once, however often the form is sent; or tells on the form why not: in no transaction of its own, which a refusal would end. */
    public boolean take(GiftForm form, Errors errors) {
        Answers answers = new Answers(errors, shop.currency());
        UUID id = answers.id("", form.id, "arrangements.error.form");
        LocalDate date = answers.date("date", form.date);
        String giver = answers.text("giver", form.giver, 200, "arrangements.error.giver");
        Optional<SupplyCatalog.Known> supply = Ids.read(form.supply).flatMap(supplies::find);
        if (supply.isEmpty()) {
            answers.wrong("supply", "arrangements.error.supply");
        }
        Optional<BigDecimal> quantity = supply.flatMap(known ->
                answers.quantity("quantity", form.quantity, known.facts().dimension(), known.measuresOn(date)));
        if (quantity.filter(read -> read.signum() == 0).isPresent()) {
            answers.wrong("quantity", "arrangements.error.quantity");
        }
        Amount value = answers.optionalAmount("value", form.value).orElse(Amount.ZERO);
        if (form.forWork && value.isZero() && !answers.anyWrong()) {
            answers.wrong("value", "arrangements.error.value");
        }
        String note = answers.note("note", form.note, 2000);
        if (answers.anyWrong() || quantity.isEmpty()) {
            return false;
        }
        SupplyGift gift = new SupplyGift(id, date, note, giver, supply.get().id(), quantity.get(), value, form.forWork);
        return books.find(SupplyGift.class, id).isPresent() || recorded(gift, errors);
    }

    /** @throws Refused where its year is sealed */
    @Transactional
    public void remove(UUID id) {
        books.remove(books.find(SupplyGift.class, id).orElseThrow(() -> new NotFound("Supply received " + id)));
    }

    private boolean recorded(SupplyGift gift, Errors errors) {
        try {
            books.record(gift);
            return true;
        } catch (Refused refused) {
            refusal.tell(errors, refused);
            return false;
        }
    }
}
