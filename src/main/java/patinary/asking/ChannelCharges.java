package patinary.asking;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Books;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.spending.Expense;

/** Fees for offers and months: what is due, made into expenses when she says so. docs/decisions has why. */
@Service
@Transactional
class ChannelCharges {

    private static final String LISTED = """
            select o.id as offer_id, o.title, d.doc_date as listed_on, oc.channel_id
            from offer o
            join document d on d.id = o.id
            join offer_channel oc on oc.offer_id = o.id
            where d.doc_date >= :first
              and exists (select 1 from channel_fee f where f.channel_id = oc.channel_id and f.offer_minor > 0)
              and not exists (select 1 from channel_charge cc
                              where cc.channel_id = oc.channel_id and cc.offer_id = o.id)
            order by d.doc_date, o.id""";

    private record MonthRow(UUID channelId, LocalDate forMonth) {}

    private final JdbcClient jdbc;
    private final ChannelRules channels;
    private final Books books;
    private final CurrentShop shop;

    ChannelCharges(JdbcClient jdbc, ChannelRules channels, Books books, CurrentShop shop) {
        this.jdbc = jdbc;
        this.channels = channels;
        this.books = books;
        this.shop = shop;
    }

    /** The oldest first. */
    @Transactional(readOnly = true)
    public List<Charge> due() {
        List<ChargesDue.Listed> listed = jdbc.sql(LISTED)
                .param("first", shop.firstDay())
                .query(ChargesDue.Listed.class)
                .list();
        List<MonthRow> months = jdbc.sql("select channel_id, for_month from channel_charge where for_month is not null")
                .query(MonthRow.class)
                .list();
        List<Charge> due = new ArrayList<>();
        for (ChannelRules.Known channel : channels.all()) {
            Set<LocalDate> settled = new HashSet<>();
            months.stream()
                    .filter(row -> row.channelId().equals(channel.id()))
                    .forEach(row -> settled.add(row.forMonth()));
            due.addAll(ChargesDue.ofOffers(channel, listed));
            due.addAll(ChargesDue.ofMonths(channel, shop.firstDay(), shop.today(), settled));
        }
        due.sort(
                Comparator.comparing(Charge::day).thenComparing(Charge::channel).thenComparing(Charge::key));
        return due;
    }

    /**
     * Settles charges by one expense each; an amount may differ from the rule's.
     *
     * @throws patinary.ledger.Refused where a day lies in a sealed year; then nothing is settled
     */
    public void record(List<Paid> paid) {
        for (Paid one : paid) {
            Charge charge = one.charge();
            UUID id = UUID.randomUUID();
            books.record(new Expense(
                    id,
                    charge.day(),
                    one.note(),
                    charge.category(),
                    charge.channel(),
                    charge.moneyPlaceId(),
                    one.amount()));
            settle(charge, id);
        }
    }

    /** They were not owed. */
    public void waive(List<Charge> charges) {
        charges.forEach(charge -> settle(charge, null));
    }

    private void settle(Charge charge, @Nullable UUID expense) {
        jdbc.sql("insert into channel_charge (id, channel_id, offer_id, for_month, expense_id) values (?, ?, ?, ?, ?)")
                .params(UUID.randomUUID(), charge.channelId(), charge.offerId(), charge.month(), expense)
                .update();
    }

    /** A charge with what was really paid. */
    record Paid(Charge charge, Amount amount, String note) {}
}
