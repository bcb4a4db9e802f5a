package patinary.exchange;

import java.io.IOException;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.durable.ManyRows;
import patinary.ledger.Books;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.Tongue;

/** Puts a checked archive into an empty shop and derives the postings anew: all of it, or nothing. */
@Service
class ArchiveImport {

    private final JdbcTemplate jdbc;
    private final Books books;
    private final CurrentShop shop;
    private final Clock clock;
    private final PhotoImport photos;
    private final ManyRows many;

    ArchiveImport(JdbcTemplate jdbc, ManyRows many, Books books, CurrentShop shop, Clock clock, PhotoImport photos) {
        this.jdbc = jdbc;
        this.books = books;
        this.shop = shop;
        this.clock = clock;
        this.photos = photos;
        this.many = many;
    }

    /**
     * Stores a checked archive.
     *
     * @throws ArchiveRefused where the shop is not empty
     * @throws patinary.ledger.Refused where documents cannot be true beside each other
     */
    @Transactional(rollbackFor = IOException.class)
    public void store(ArchiveSource source, Cells cells, Progress progress) throws IOException {
        // Whoever else changes the books waits until this is done.
        jdbc.queryForList("select changes from books where id = 1 for update");
        refuseUnlessEmpty();
        ErrorList errors = new ErrorList();
        RowReader reader = new RowReader(source, cells, errors, progress);
        for (ArchiveTable table : ArchiveTables.ALL) {
            if (source.names().contains(table.file())) {
                store(reader, table, new Fields(cells.currency()));
            }
        }
        errors.refuseIfAny();
        photos.store(source, progress);
        shop.changed();
        books.rederive();
    }

    /** Whether nothing has been recorded here, so that an archive may come in. */
    boolean isShopEmpty() {
        return ArchiveTables.ALL.stream()
                .filter(table -> !table.isShop())
                .allMatch(table -> jdbc.queryForList("select 1 from " + table.name() + " fetch first 1 rows only")
                        .isEmpty());
    }

    void refuseUnlessEmpty() {
        if (!isShopEmpty()) {
            throw new ArchiveRefused(ArchiveError.ofFile("", "not-empty"));
        }
    }

    private void store(RowReader reader, ArchiveTable table, Fields fields) throws IOException {
        if (table.isShop()) {
            reader.read(table, this::shop);
            return;
        }
        TableFilling filling = new TableFilling(many, table, fields);
        reader.read(table, filling::add);
        filling.end();
    }

    /** The shop itself: it may have been set up already, and then takes over what the archive says of it. */
    private void shop(Row row) {
        Amount rate = (Amount) java.util.Objects.requireNonNull(row.get("hourly_rate"));
        // An archive of before the pages had a language.
        Locale usual = Tongue.best(List.of());
        List<@Nullable Object> facts = new ArrayList<>();
        Collections.addAll(
                facts,
                row.get("name"),
                row.get("currency"),
                row.get("minor_digits"),
                row.get("costing_method"),
                rate.minor(),
                row.get("tax_table"),
                row.get("first_day"),
                row.get("time_zone"),
                row.has("language") ? row.get("language") : usual.getLanguage(),
                row.has("country") ? row.get("country") : usual.getCountry());
        int changed = jdbc.update("""
                update shop set name = ?, currency = ?, minor_digits = ?, costing_method = ?, hourly_rate_minor = ?,
                    tax_table = ?, first_day = ?, time_zone = ?, language = ?, country = ?, version = version + 1 where id = 1""", facts.toArray());
        if (changed == 0) {
            facts.add(clock.instant().atOffset(ZoneOffset.UTC));
            jdbc.update("""
                    insert into shop (name, currency, minor_digits, costing_method, hourly_rate_minor, tax_table,
                        first_day, time_zone, language, country, created_at, id, version)
                    values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 1, 0)""", facts.toArray());
        }
    }
}
