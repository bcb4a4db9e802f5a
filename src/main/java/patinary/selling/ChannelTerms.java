package patinary.selling;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Trail;
import patinary.money.Amount;
import patinary.money.Percent;

/** What she usually charges and spends for a sale on each channel, read and kept. */
@Service
@Transactional
public class ChannelTerms {

    private record Row(long shippingMinor, long outlayMinor, BigDecimal taxPercent, boolean shippingTaxed) {

        UsualTerms terms() {
            return new UsualTerms(
                    Amount.of(shippingMinor),
                    Amount.of(outlayMinor),
                    new Percent(taxPercent.stripTrailingZeros()),
                    shippingTaxed);
        }
    }

    private final JdbcClient jdbc;
    private final Trail trail;

    ChannelTerms(JdbcClient jdbc, Trail trail) {
        this.jdbc = jdbc;
        this.trail = trail;
    }

    @Transactional(readOnly = true)
    public UsualTerms of(UUID channel) {
        return jdbc.sql("select shipping_minor, outlay_minor, tax_percent, shipping_taxed from channel_usual"
                        + " where channel_id = ?")
                .param(channel)
                .query(Row.class)
                .optional()
                .map(Row::terms)
                .orElse(UsualTerms.NONE);
    }

    /** Of every channel of which something is kept. */
    @Transactional(readOnly = true)
    public Map<UUID, UsualTerms> all() {
        Map<UUID, UsualTerms> all = new HashMap<>();
        jdbc.sql("select channel_id, shipping_minor, outlay_minor, tax_percent, shipping_taxed from channel_usual")
                .query((row, number) -> all.put(
                        row.getObject("channel_id", UUID.class),
                        new Row(
                                        row.getLong("shipping_minor"),
                                        row.getLong("outlay_minor"),
                                        row.getBigDecimal("tax_percent"),
                                        row.getBoolean("shipping_taxed"))
                                .terms()))
                .list();
        return all;
    }

    /** Replaces what was kept of a channel. */
    void keep(UUID channel, UsualTerms terms) {
        trail.thing("channel", channel);
        jdbc.sql("delete from channel_usual where channel_id = ?")
                .param(channel)
                .update();
        jdbc.sql("insert into channel_usual (channel_id, shipping_minor, outlay_minor, tax_percent, shipping_taxed)"
                        + " values (?, ?, ?, ?, ?)")
                .params(
                        channel,
                        terms.shipping().minor(),
                        terms.outlay().minor(),
                        terms.tax().value(),
                        terms.shippingTaxed())
                .update();
    }
}
