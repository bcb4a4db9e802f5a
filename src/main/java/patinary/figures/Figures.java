package patinary.figures;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.AfterChange;
import patinary.ledger.Batches;

/** Renews the kept figures of whatever a change of the books touches, in its transaction. */
@Service
@Transactional(propagation = Propagation.MANDATORY)
public class Figures implements AfterChange {

    /** So many ids at once, so that what H2 holds in memory for them stays small however big the shop is. */
    private static final int BATCH = 2_000;

    private static final Logger LOG = LoggerFactory.getLogger(Figures.class);

    private final TouchedIds touched;
    private final Reach reach;
    private final PlannerStatistics statistics;
    private final JdbcTemplate jdbc;

    Figures(TouchedIds touched, Reach reach, PlannerStatistics statistics, JdbcTemplate jdbc) {
        this.touched = touched;
        this.reach = reach;
        this.statistics = statistics;
        this.jdbc = jdbc;
    }

    @Override
    public void booksChanged(Set<UUID> documents) {
        statistics.fewAreAsked();
        touched.set(Touched.DOCUMENT, documents);
        reach.ofDocumentsBefore();
        renew(KeptFigure.DOCUMENT_PIECE);
        renew(KeptFigure.DOCUMENT_SALE);
        renew(KeptFigure.DOCUMENT_STOCK);
        renew(KeptFigure.DOCUMENT_PROFIT);
        reach.ofDocumentsAfter();
        renew(KeptFigure.SUPPLY_STOCK);
        renew(KeptFigure.SALE_PART);
        reach.ofSales();
        renew(KeptFigure.OFFER_STATE);
        renew(KeptFigure.PIECE_STATE);
        renew(KeptFigure.PIECE_FIGURES);
        renew(KeptFigure.PIECE_STOCK);
        renew(KeptFigure.PIECE_LINE);
        touched.clear();
        statistics.asUsual();
    }

    @Override
    public void booksRebuilt() {
        boolean large = isLarge();
        if (large) {
            statistics.ofAll();
        }
        for (KeptFigure figure : KeptFigure.values()) {
            jdbc.update("delete from " + figure.table());
        }
        for (Touched by : Touched.values()) {
            if (statistics.areCollected()) {
                renewAllAtOnce(by, large);
            } else {
                renewAllInBatches(by);
            }
        }
        LOG.info("All kept figures were made anew");
    }

    /** A server looks through whole tables for each part of them, and puts aside what its memory does not hold. */
    private void renewAllAtOnce(Touched by, boolean large) {
        touched.add(by, by.all());
        if (large) {
            statistics.of(by.table());
        }
        for (KeptFigure figure : KeptFigure.of(by)) {
            insert(figure);
            if (large) {
                statistics.of(figure.table());
            }
        }
        touched.clear(by);
    }

    /** Whether it pays to tell a server how large its tables have become. */
    private boolean isLarge() {
        return !jdbc.queryForList(
                        "select id from document offset " + BATCH + " rows fetch first 1 row only", UUID.class)
                .isEmpty();
    }

    private void renewAllInBatches(Touched by) {
        for (List<UUID> ids : Batches.of(jdbc.queryForList(by.all(), UUID.class), BATCH)) {
            touched.set(by, ids);
            KeptFigure.of(by).forEach(this::insert);
            touched.clear(by);
        }
    }

    /** Keeps the figures of a piece that no document names yet; to be called when it was made. */
    public void pieceMade(UUID piece) {
        touched.set(Touched.PIECE, List.of(piece));
        renew(KeptFigure.PIECE_STATE);
        renew(KeptFigure.PIECE_FIGURES);
        touched.clear(Touched.PIECE);
    }

    /** Keeps the supply lines of the pieces that a supply was used on; to be called when it went to another line. */
    public void supplyMoved(UUID supply) {
        reach.ofSupply(supply);
        renew(KeptFigure.PIECE_LINE);
        touched.clear(Touched.PIECE);
    }

    private void renew(KeptFigure figure) {
        // Most changes reach no sale or no offer; to see that costs less than to find nothing by a long definition.
        if (touched.removeFrom(figure.table(), figure.by())) {
            insert(figure);
        }
    }

    private void insert(KeptFigure figure) {
        jdbc.update("insert into " + figure.table() + " select * from " + figure.definition());
    }
}
