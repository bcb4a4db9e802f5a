package patinary.supplies;

import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.figures.Figures;
import patinary.ledger.Books;
import patinary.ledger.Trail;

/** Keeps the supplies and their lines; refuses what documents that already name a supply would not survive. */
@Service
@Transactional
class SupplyKeeping {

    private static final String USED = """
            select count(*) from (
                select supply_id from opening_supply union all
                select supply_id from receipt_line union all
                select supply_id from supplier_return_supply union all
                select supply_id from taking union all
                select supply_id from bundle_part union all
                select supply_id from bench_use union all
                select kept_as from bench_pot union all
                select supply_id from lot_date union all
                select supply_id from bench_mishap union all
                select supply_id from supply_count union all
                select supply_id from sale_line union all
                select supply_id from sale_wrap union all
                select supply_id from parcel_wrap union all
                select supply_id from refund_line) u
            where u.supply_id = ?""";

    private final Supplies supplies;
    private final SupplyLines lines;
    private final Books books;
    private final Figures figures;
    private final JdbcClient jdbc;
    private final Trail trail;

    SupplyKeeping(Supplies supplies, SupplyLines lines, Books books, Figures figures, JdbcClient jdbc, Trail trail) {
        this.supplies = supplies;
        this.lines = lines;
        this.books = books;
        this.figures = figures;
        this.jdbc = jdbc;
        this.trail = trail;
    }

    /** Whether any document names the supply. */
    @Transactional(readOnly = true)
    boolean isUsed(UUID supply) {
        return jdbc.sql(USED).param(supply).query(Long.class).single() > 0;
    }

    @Transactional(readOnly = true)
    boolean isNameTaken(UUID line, String name, @Nullable UUID except) {
        return supplies.findAllByOrderByName().stream()
                .filter(supply -> !supply.id().equals(except))
                .map(Supply::facts)
                .anyMatch(facts -> facts.lineId().equals(line) && facts.name().equalsIgnoreCase(name));
    }

    @Transactional(readOnly = true)
    boolean isLineNameTaken(String name, @Nullable UUID except) {
        return lines.findAllByOrderByName().stream()
                .anyMatch(
                        line -> line.name().equalsIgnoreCase(name) && !line.id().equals(except));
    }

    /** Stores a supply, with a new line of its own where one is named. */
    void save(UUID id, Supply.Facts facts, @Nullable SupplyLine newLine, long version) {
        trail.thing("supply", id);
        Supply.Facts complete =
                newLine == null ? facts : facts.inLine(lines.save(newLine).id());
        Optional<Supply> stored = supplies.findById(id);
        if (stored.isEmpty()) {
            supplies.save(new Supply(id, complete));
            return;
        }
        refuseStale(stored.get().version(), version);
        boolean moves = !stored.get().facts().lineId().equals(complete.lineId());
        if (moves) {
            books.hold();
        }
        stored.get().rewrite(complete);
        if (moves) {
            supplies.flush();
            figures.supplyMoved(id);
        }
    }

    /** Removes a supply that nothing names; says whether it did. */
    boolean remove(UUID id) {
        if (isUsed(id)) {
            return false;
        }
        trail.thing("supply", id);
        jdbc.sql("delete from supply_measure_change where supply_id = ?")
                .param(id)
                .update();
        supplies.findById(id).ifPresent(supplies::delete);
        return true;
    }

    void saveLine(UUID id, String name, String maker, long version) {
        trail.thing("supply_line", id);
        Optional<SupplyLine> stored = lines.findById(id);
        if (stored.isEmpty()) {
            lines.save(new SupplyLine(id, name, maker));
            return;
        }
        refuseStale(stored.get().version(), version);
        stored.get().rewrite(name, maker);
    }

    /** Removes a line without supplies; says whether it did. */
    boolean removeLine(UUID id) {
        boolean used = jdbc.sql("select count(*) from supply where supply_line_id = ?")
                        .param(id)
                        .query(Long.class)
                        .single()
                > 0;
        if (!used) {
            trail.thing("supply_line", id);
            lines.findById(id).ifPresent(lines::delete);
        }
        return !used;
    }

    private static void refuseStale(long stored, long seen) {
        if (stored != seen) {
            throw new OptimisticLockingFailureException("Changed since the form was drawn");
        }
    }
}
