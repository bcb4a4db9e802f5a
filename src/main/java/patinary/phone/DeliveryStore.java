package patinary.phone;

import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The keys of entries that were taken, with their receipts; kept for ever. */
@Repository
class DeliveryStore {

    private final JdbcClient jdbc;
    private final Clock clock;

    DeliveryStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** A key that was taken, with what came under it. */
    record Taken(String fingerprint, Receipt receipt) {}

    Optional<Taken> find(Entry entry) {
        return jdbc.sql("select fingerprint, href, words from delivery where who = ? and entry_key = ?")
                .params(entry.who(), entry.key())
                .query((row, number) -> new Taken(
                        row.getString("fingerprint"),
                        new Receipt(entry.key(), row.getString("href"), row.getString("words"))))
                .optional();
    }

    /** Claims the key. Waits, or fails, where another transaction has claimed it; the key is unique in the database. */
    void claim(Entry entry) {
        jdbc.sql("""
                        insert into delivery (who, entry_key, fingerprint, href, words, captured_at, received_at)
                        values (?, ?, ?, '', '', ?, ?)
                        """)
                .params(Arrays.asList(
                        entry.who(), entry.key(), entry.fingerprint(), utc(entry.capturedAt()), utc(clock.instant())))
                .update();
    }

    void answered(Entry entry, Receipt receipt) {
        jdbc.sql("update delivery set href = ?, words = ? where who = ? and entry_key = ?")
                .params(receipt.href(), receipt.words(), entry.who(), entry.key())
                .update();
    }

    private static @Nullable OffsetDateTime utc(@Nullable Instant moment) {
        return moment == null ? null : moment.atOffset(ZoneOffset.UTC);
    }
}
