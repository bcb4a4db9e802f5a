package patinary.taxyear;

import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Books;
import patinary.ledger.Calculation;
import patinary.ledger.Refused;
import patinary.web.NotFound;

/** Seals a year: from then on the books refuse every change up to its last day. */
@Service
class Seals {

    /** A seal; {@code holds} says whether the postings still give the fingerprint that was sealed. */
    record Seal(UUID id, int year, String hash, int version, boolean holds) {}

    private record Stored(UUID id, String postingsHash, int calculationVersion) {}

    private final Books books;
    private final YearRows rows;
    private final JdbcClient jdbc;

    Seals(Books books, YearRows rows, JdbcClient jdbc) {
        this.books = books;
        this.rows = rows;
        this.jdbc = jdbc;
    }

    @Transactional(readOnly = true)
    public Optional<Seal> of(int year) {
        return jdbc.sql("select id, postings_hash, calculation_version from year_seal where tax_year = ?")
                .param(year)
                .query(Stored.class)
                .optional()
                .map(seal -> new Seal(
                        seal.id(),
                        year,
                        seal.postingsHash(),
                        seal.calculationVersion(),
                        seal.postingsHash().equals(fingerprint(year))));
    }

    /**
     * Seals a year; one that is sealed already stays as it is.
     *
     * @throws Refused where a later year is sealed
     */
    @Transactional
    public void seal(int year, String note) {
        if (of(year).isEmpty()) {
            books.record(new YearSeal(
                    UUID.randomUUID(), YearBooks.last(year), note, year, fingerprint(year), Calculation.VERSION));
        }
    }

    /**
     * Takes the seal off.
     *
     * @throws Refused where a later year is sealed
     */
    @Transactional
    public void open(int year) {
        UUID id = of(year).orElseThrow(() -> new NotFound("seal of " + year)).id();
        books.remove(books.find(YearSeal.class, id).orElseThrow(() -> new NotFound("seal of " + year)));
    }

    @Transactional(readOnly = true)
    public String fingerprint(int year) {
        return PostingsHash.of(rows.all(year));
    }
}
