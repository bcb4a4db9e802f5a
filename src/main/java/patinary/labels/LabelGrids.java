package patinary.labels;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.shop.CurrentShop;

/** The grids to choose from: those that came with the program, and her own. */
@Repository
class LabelGrids {

    /** A row of her own grids. */
    record Row(
            UUID id,
            String name,
            String paper,
            int gridRows,
            int gridColumns,
            BigDecimal leftMm,
            BigDecimal topMm,
            BigDecimal widthMm,
            BigDecimal heightMm,
            BigDecimal acrossMm,
            BigDecimal downMm) {

        KnownGrid grid() {
            return new KnownGrid(
                    id.toString(),
                    name,
                    new LabelGrid(
                            Paper.valueOf(paper),
                            gridRows,
                            gridColumns,
                            leftMm,
                            topMm,
                            widthMm,
                            heightMm,
                            acrossMm,
                            downMm));
        }
    }

    private static final List<KnownGrid> BUILT_IN = BuiltInGrids.load();

    private final JdbcClient jdbc;
    private final CurrentShop shop;

    LabelGrids(JdbcClient jdbc, CurrentShop shop) {
        this.jdbc = jdbc;
        this.shop = shop;
    }

    /** Her own first. */
    List<KnownGrid> all() {
        return Stream.concat(own().stream(), builtIn().stream()).toList();
    }

    /** Those on the paper of the shop's country first. */
    List<KnownGrid> builtIn() {
        Paper usual = Paper.of(shop.locale());
        return BUILT_IN.stream()
                .sorted(Comparator.comparing(known -> known.grid().paper() != usual))
                .toList();
    }

    List<KnownGrid> own() {
        return jdbc.sql("select * from label_grid order by lower(name), name").query(Row.class).list().stream()
                .map(Row::grid)
                .toList();
    }

    Optional<KnownGrid> find(String key) {
        return all().stream().filter(known -> known.key().equals(key)).findFirst();
    }

    /** Whether another of her grids bears this name, capitals or not. */
    boolean isTaken(String name, UUID but) {
        return jdbc.sql("select count(*) from label_grid where lower(name) = lower(?) and id <> ?")
                        .params(name, but)
                        .query(Long.class)
                        .single()
                > 0;
    }

    /** The version of a grid of hers, or nothing where it is new. */
    Optional<Long> version(UUID id) {
        return jdbc.sql("select version from label_grid where id = ?")
                .param(id)
                .query(Long.class)
                .optional();
    }

    /**
     * Keeps a grid of hers, new or changed.
     *
     * @throws OptimisticLockingFailureException where somebody changed it since its form was drawn
     */
    @Transactional
    public void keep(UUID id, String name, LabelGrid grid, long version) {
        Optional<Long> stored = version(id);
        if (stored.filter(known -> known != version).isPresent()) {
            throw new OptimisticLockingFailureException("Label grid " + id + " is stale");
        }
        remove(id);
        jdbc.sql("""
            insert into label_grid (name, paper, grid_rows, grid_columns, left_mm, top_mm, width_mm,
                height_mm, across_mm, down_mm, id, version)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)\
            """)
                .params(
                        name,
                        grid.paper().name(),
                        grid.rows(),
                        grid.columns(),
                        grid.left(),
                        grid.top(),
                        grid.width(),
                        grid.height(),
                        grid.across(),
                        grid.down(),
                        id,
                        stored.map(known -> known + 1).orElse(0L))
                .update();
    }

    @Transactional
    public void remove(UUID id) {
        jdbc.sql("delete from label_grid where id = ?").param(id).update();
    }
}
