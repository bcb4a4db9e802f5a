package patinary.discounts;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Trail;
import patinary.web.NotFound;

/** Her codes, read and kept, with the sales they were used on. */
@Service
@Transactional
public class DiscountBook {

    /**
     * A code with what it gave.
     *
     * @param sales how many it was used on
     * @param offMinor what it took off, in minor units
     * @param netMinor what those sales came to after discounts, without shipping, tax and refunds
     * @param lastUsed the latest of them, or null
     */
    record Row(
            UUID id,
            Discount discount,
            String note,
            long version,
            long sales,
            long offMinor,
            long netMinor,
            @Nullable LocalDate lastUsed) {}

    private record Used(String code, long sales, long offMinor, long netMinor, LocalDate lastUsed) {}

    private static final Used NEVER = new Used("", 0, 0, 0, LocalDate.EPOCH);

    /** A document's rows on the account of sales are what its lines came to. */
    private static final String USED = """
            select upper(s.discount_code) as code, count(*) as sales, sum(s.discount_minor) as off_minor,
                   cast(coalesce(sum(p.net_minor), 0) as bigint) as net_minor, max(d.doc_date) as last_used
            from sale s
            join document d on d.id = s.id
            left join (
                select document_id, -sum(amount_minor) as net_minor
                from posting where account = 'SALES' group by document_id) p on p.document_id = s.id
            where s.discount_code <> ''
            group by upper(s.discount_code)""";

    private final DiscountCodes codes;
    private final JdbcClient jdbc;
    private final Trail trail;

    DiscountBook(DiscountCodes codes, JdbcClient jdbc, Trail trail) {
        this.codes = codes;
        this.jdbc = jdbc;
        this.trail = trail;
    }

    /** What a code takes off; capitals and small letters are the same. Nothing where there is no such code. */
    @Transactional(readOnly = true)
    public Optional<Discount> find(String code) {
        return codes.findByCodeIgnoreCase(code.strip()).map(DiscountCode::discount);
    }

    @Transactional(readOnly = true)
    List<Row> all() {
        Map<String, Used> used = jdbc.sql(USED).query(Used.class).list().stream()
                .collect(Collectors.toMap(Used::code, Function.identity()));
        return codes.findAllByOrderByCode().stream()
                .map(code ->
                        row(code, used.getOrDefault(code.discount().code().toUpperCase(java.util.Locale.ROOT), NEVER)))
                .toList();
    }

    @Transactional(readOnly = true)
    Row row(UUID id) {
        return all().stream()
                .filter(row -> row.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new NotFound("Discount code " + id));
    }

    @Transactional(readOnly = true)
    boolean isTaken(String code, UUID own) {
        return codes.findByCodeIgnoreCase(code)
                .filter(other -> !other.id().equals(own))
                .isPresent();
    }

    /** Adds it, or changes the one of that id where it is still as it was when the form was drawn. */
    void save(UUID id, long version, Discount discount, String note) {
        trail.thing("discount_code", id);
        Optional<DiscountCode> stored = codes.findById(id);
        if (stored.isEmpty()) {
            codes.save(new DiscountCode(id, discount, note));
            return;
        }
        if (stored.get().version() != version) {
            throw new OptimisticLockingFailureException("Discount code " + id + " is stale");
        }
        stored.get().rewrite(discount, note);
    }

    /** Sales keep the code they were made with. */
    void remove(UUID id) {
        trail.thing("discount_code", id);
        codes.delete(codes.findById(id).orElseThrow(() -> new NotFound("Discount code " + id)));
    }

    private static Row row(DiscountCode code, Used used) {
        return new Row(
                code.id(),
                code.discount(),
                code.note(),
                code.version(),
                used.sales(),
                used.offMinor(),
                used.netMinor(),
                used.sales() == 0 ? null : used.lastUsed());
    }
}
