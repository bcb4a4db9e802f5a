package patinary.taxyear;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Books;
import patinary.ledger.Calculation;
import patinary.ledger.Refused;
import patinary.taxbasis.TaxYears;
import patinary.web.NotFound;

/** Seals a year: from then on the books refuse every change up to its last day. */
@Service
class Seals {

    /**
     * A seal.
     *
     * @param holds whether the postings still give the fingerprint that was sealed
     * @param open what was open when it was sealed
     */
    record Seal(
            UUID id,
            int year,
            String hash,
            int version,
            Instant sealedAt,
            String note,
            boolean holds,
            List<OpenItem> open) {}

    /** A seal that was taken off. */
    record TakenOff(Instant takenOffAt, String takenOffBy, String reason, Instant sealedAt, String postingsHash) {}

    private record Sealed(UUID id, int taxYear) {}

    private final Books books;
    private final YearRows rows;
    private final Closing closing;
    private final TaxYears taxYears;
    private final JdbcClient jdbc;
    private final Clock clock;

    Seals(Books books, YearRows rows, Closing closing, TaxYears taxYears, JdbcClient jdbc, Clock clock) {
        this.books = books;
        this.rows = rows;
        this.closing = closing;
        this.taxYears = taxYears;
        this.jdbc = jdbc;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    public Optional<Seal> of(int year) {
        return Optional.ofNullable(ids().get(year)).flatMap(this::read);
    }

    /** The sealed years, each with the id of its seal. */
    @Transactional(readOnly = true)
    public Map<Integer, UUID> ids() {
        return jdbc.sql("select id, tax_year from year_seal").query(Sealed.class).list().stream()
                .collect(Collectors.toMap(Sealed::taxYear, Sealed::id));
    }

    /** @param id one of {@link #ids} */
    @Transactional(readOnly = true)
    public Optional<Seal> read(UUID id) {
        return books.read(YearSeal.class, id)
                .map(seal -> new Seal(
                        seal.id(),
                        seal.taxYear(),
                        seal.postingsHash(),
                        seal.calculationVersion(),
                        seal.recordedAt(),
                        seal.note(),
                        seal.postingsHash().equals(fingerprint(seal.taxYear())),
                        seal.open()));
    }

    /** Every seal of a year that was taken off, the latest first. */
    @Transactional(readOnly = true)
    public List<TakenOff> takenOff(int year) {
        return jdbc.sql("""
                        select taken_off_at, taken_off_by, reason, sealed_at, postings_hash
                        from seal_taken_off where tax_year = ? order by taken_off_at desc""").param(year).query(TakenOff.class).list();
    }

    /**
     * Seals a year, and keeps what is open in it with the seal; one that is sealed already stays as it is.
     *
     * @throws Refused where a later year is sealed
     */
    @Transactional
    public void seal(int year, String note) {
        books.hold();
        if (find(year).isEmpty()) {
            YearSeal seal = new YearSeal(
                    UUID.randomUUID(), taxYears.last(year), note, year, fingerprint(year), Calculation.VERSION);
            seal.leaves(closing.items(year));
            books.record(seal);
        }
    }

    /**
     * Takes the seal off, and leaves a trace that stays.
     *
     * @param who the name of the owner
     * @throws Refused where a later year is sealed
     */
    @Transactional
    public void takeOff(int year, String who, String reason) {
        YearSeal seal = find(year).orElseThrow(() -> new NotFound("seal of " + year));
        books.remove(seal);
        jdbc.sql("""
                        insert into seal_taken_off (id, tax_year, sealed_at, postings_hash, calculation_version, taken_off_at,
                            taken_off_by, reason, version) values (?, ?, ?, ?, ?, ?, ?, ?, 0)""")
                .params(
                        UUID.randomUUID(),
                        year,
                        seal.recordedAt().atOffset(ZoneOffset.UTC),
                        seal.postingsHash(),
                        seal.calculationVersion(),
                        clock.instant().atOffset(ZoneOffset.UTC),
                        who,
                        reason)
                .update();
    }

    @Transactional(readOnly = true)
    public String fingerprint(int year) {
        return PostingsHash.of(rows.all(year));
    }

    private Optional<YearSeal> find(int year) {
        return Optional.ofNullable(ids().get(year)).flatMap(id -> books.find(YearSeal.class, id));
    }
}
