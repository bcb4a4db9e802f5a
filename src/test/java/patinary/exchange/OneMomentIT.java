package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.testing.ShopTest;

/** Somebody goes on working while the shop is written out: what is written is all of one moment. */
@ShopTest
class OneMomentIT {

    @Autowired
    private ArchiveExport export;

    @Autowired
    private JdbcClient jdbc;

    @Test
    void whatIsRecordedMeanwhileIsInNoFile() throws IOException {
        record("before");
        MemoryArchive archive = new MemoryArchive();
        ArchiveSink sink = archive.sink();

        // Before each file is written, more is recorded: in tables that belong together, and in some that nothing ties.
        export.writeWithFigures(
                name -> {
                    CompletableFuture.runAsync(() -> record(name)).join();
                    return sink.open(name);
                },
                Progress.SILENT);

        assertThat(jdbc.sql("select count(*) from piece").query(Long.class).single())
                .isGreaterThan(50);
        for (String file : new String[] {"piece.csv", "delivery.csv", "photo.csv"}) {
            assertThat(archive.text(file).lines().count()).as(file).isEqualTo(2);
        }
        assertThat(archive.text(BookFigures.FILE))
                .isEqualTo("year,account,amount\r\n2025,OPENING,-1.00\r\n2025,PIECES,1.00\r\n");
    }

    private void record(String what) {
        UUID id = UUID.randomUUID();
        jdbc.sql("insert into piece (id, code, title, material, place, note, version) values (?, ?, ?, '', '', '', 0)")
                .params(id, id.toString().substring(0, 8), what)
                .update();
        jdbc.sql("""
                        insert into photo (id, piece_id, stage, sort_order, width, height, bytes, sha256, added_at, added_by,
                            version)
                        values (?, ?, 'AFTER', 1, 1, 1, 1, ?, current_timestamp, 'x', 0)
                        """).params(id, id, "0".repeat(64)).update();
        jdbc.sql("""
                        insert into delivery (who, entry_key, fingerprint, href, words, received_at)
                        values ('Robin', ?, '', '/', '', current_timestamp)
                        """).param(id).update();
        jdbc.sql("""
                        insert into document (id, kind, kind_rank, doc_date, note, recorded_at, version)
                        values (?, 'OPENING', 0, date '2025-01-01', '', current_timestamp, 0)
                        """).param(id).update();
        post(id, 0, "PIECES", 100);
        post(id, 1, "OPENING", -100);
    }

    private void post(UUID document, int line, String account, long minor) {
        jdbc.sql("""
                        insert into posting (document_id, line, doc_date, account, estimated, amount_minor, quantity)
                        values (?, ?, date '2025-01-01', ?, false, ?, 0)
                        """).params(document, line, account, minor).update();
    }
}
