package patinary.invented;

import java.io.IOException;
import java.math.BigDecimal;
import patinary.exchange.NewArchive;
import patinary.exchange.NewArchive.Line;

/** What was done at the invented bench, and what was found left. */
final class BenchFiles {

    private static final double EXACT = 0.2;

    private final Facts facts;
    private final NewArchive archive;

    BenchFiles(Facts facts, NewArchive archive) {
        this.facts = facts;
        this.archive = archive;
    }

    private interface Stretches {

        void on(PieceLife life, long number, PieceLife.Stretch stretch);
    }

    private void each(Stretches stretches) {
        facts.lives().each(life -> {
            for (int i = 0; i < life.bench().size(); i++) {
                stretches.on(
                        life,
                        (long) life.number() * Lives.STRETCHES + i,
                        life.bench().get(i));
            }
        });
    }

    void write() throws IOException {
        archive.table(
                "bench_entry",
                rows -> each((life, number, stretch) -> rows.add(new Line()
                        .with("id", facts.id("bench", number))
                        .with("date", stretch.day())
                        .with("recorded_at", Facts.evening(stretch.day()))
                        .with("minutes", stretch.minutes())
                        .with("done", "Invented work"))));
        archive.table(
                "bench_piece",
                rows -> each((life, number, stretch) -> rows.add(new Line()
                        .with("bench_entry_id", facts.id("bench", number))
                        .with("piece_id", facts.id("piece", life.number()))
                        .with("ready", life.isReady(stretch)))));
        archive.table(
                "bench_use",
                rows -> each((life, number, stretch) -> {
                    for (int i = 0; i < stretch.uses().size(); i++) {
                        PieceLife.Drop use = stretch.uses().get(i);
                        rows.add(new Line()
                                .with("bench_entry_id", facts.id("bench", number))
                                .with("line", i + 1)
                                .with("supply_id", facts.id("supply", use.supply()))
                                .with("quantity", BigDecimal.valueOf(use.quantity()))
                                .with("estimated", !new Chance(facts.seed(), "exact", number * 8 + i).happens(EXACT)));
                    }
                }));
        archive.table(
                "bench_use_piece",
                rows -> each((life, number, stretch) -> {
                    for (int i = 0; i < stretch.uses().size(); i++) {
                        rows.add(new Line()
                                .with("bench_entry_id", facts.id("bench", number))
                                .with("line", i + 1)
                                .with("piece_id", facts.id("piece", life.number()))
                                .with("weight", BigDecimal.ONE));
                    }
                }));
        archive.table(
                "bench_mishap",
                rows -> each((life, number, stretch) -> {
                    if (stretch.mishap()) {
                        rows.add(new Line()
                                .with("bench_entry_id", facts.id("bench", number))
                                .with("line", 1)
                                .with("piece_id", facts.id("piece", life.number()))
                                .with(
                                        "supply_id",
                                        facts.id("supply", stretch.uses().get(0).supply()))
                                .with("surface", Assortment.MATERIALS.get(life.material()))
                                .with("what", "Crackled"));
                    }
                }));
        counts();
    }

    private void counts() throws IOException {
        archive.table("supply_count", rows -> {
            for (int quarter = 0; quarter < Span.QUARTERS; quarter++) {
                for (int supply = 0; supply < Assortment.SUPPLIES; supply++) {
                    rows.add(new Line()
                            .with("id", facts.id("count", (long) quarter * Assortment.SUPPLIES + supply))
                            .with("date", Span.lastOfQuarter(quarter))
                            .with("recorded_at", Facts.evening(Span.lastOfQuarter(quarter)))
                            .with("supply_id", facts.id("supply", supply))
                            .with("place", "BENCH")
                            .with("quantity", BigDecimal.valueOf(facts.plan().found(quarter, supply))));
                }
            }
        });
    }
}
