package patinary.whole;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.springframework.util.FileSystemUtils;

/**
 * Looks into the store itself while the program is dead: whether all that was answered is there, nothing is there twice, and
 * nothing is half done. Reads a copy of the embedded store, so that it is the program that mends the original.
 */
final class AfterDeath {

    private final Path folder;
    private final String url;

    /** @param url of a server, or empty for the embedded store in the folder */
    AfterDeath(Path folder, String url) {
        this.folder = folder;
        this.url = url;
    }

    /** What is wrong, in words; empty where all is well. */
    List<String> faults(Told told) throws IOException, SQLException {
        if (!url.isEmpty()) {
            try (Connection server = DriverManager.getConnection(url, "postgres", "")) {
                return look(server, told);
            }
        }
        Path copy = Files.createTempDirectory("patinary-look");
        try {
            Files.copy(folder.resolve("shop.mv.db"), copy.resolve("shop.mv.db"), StandardCopyOption.REPLACE_EXISTING);
            String store = "jdbc:h2:file:" + copy.resolve("shop") + ";IFEXISTS=TRUE";
            try (Connection embedded = DriverManager.getConnection(store, "sa", "")) {
                return look(embedded, told);
            }
        } finally {
            FileSystemUtils.deleteRecursively(copy);
        }
    }

    private List<String> look(Connection store, Told told) throws SQLException {
        List<String> faults = new ArrayList<>();
        missing("document", ids(store, "select id from document"), told.documents.keySet(), faults);
        missing("key", ids(store, "select entry_key from delivery where href <> ''"), told.receipts.keySet(), faults);
        Map<UUID, String> files = texts(store, "select id, sha256 from photo");
        missing("photo", files.keySet(), told.photos.keySet(), faults);
        files.forEach((photo, sha256) -> {
            if (!Files.isRegularFile(
                    folder.resolve(Path.of("photos", "full", sha256.substring(0, 2), sha256 + ".jpg")))) {
                faults.add("photo " + photo + " has no file");
            }
        });
        missing("import", ids(store, "select id from sales_import"), told.imports.keySet(), faults);
        for (String wrong : WRONG) {
            texts(store, wrong).forEach((id, what) -> faults.add(what + " " + id + ", found by: " + wrong));
        }
        return faults;
    }

    /** Each gives rows of an id and a word, where something is twice or half done. */
    private static final List<String> WRONG = List.of(
            "select document_id, 'does not add to zero' from posting group by document_id having sum(amount_minor) <> 0",
            "select id, 'receipt without lines' from receipt r where not exists"
                    + " (select 1 from receipt_line l where l.receipt_id = r.id)",
            "select id, 'receipt without postings' from receipt r where not exists"
                    + " (select 1 from posting p where p.document_id = r.id)",
            "select id, 'sale without postings' from sale s where not exists"
                    + " (select 1 from posting p where p.document_id = s.id)",
            "select p.id, 'twice' from piece p join piece q on q.title = p.title and q.id <> p.id"
                    + " where p.title like '% %'",
            "select b.id, 'twice' from bench_entry b join bench_entry c on c.done = b.done and c.id <> b.id"
                    + " where b.done <> ''",
            "select s.id, 'twice' from sale s join sale t on t.order_reference = s.order_reference and t.id <> s.id"
                    + " where s.order_reference <> ''",
            "select piece_id, 'sold twice' from sale_piece group by piece_id having count(*) > 1",
            "select i.id, 'half an import' from sales_import i where i.sales <>"
                    + " (select count(*) from sales_import_sale s where s.import_id = i.id)",
            "select entry_key, 'delivery without a receipt' from delivery where href = ''");

    private static void missing(String what, Set<UUID> there, Set<UUID> answered, List<String> faults) {
        Set<UUID> lost = new HashSet<>(answered);
        lost.removeAll(there);
        lost.forEach(id -> faults.add(what + " " + id + " was answered and is lost"));
    }

    private static Set<UUID> ids(Connection store, String sql) throws SQLException {
        Set<UUID> ids = new HashSet<>();
        try (Statement statement = store.createStatement();
                ResultSet rows = statement.executeQuery(sql)) {
            while (rows.next()) {
                ids.add(rows.getObject(1, UUID.class));
            }
        }
        return ids;
    }

    private static Map<UUID, String> texts(Connection store, String sql) throws SQLException {
        Map<UUID, String> texts = new HashMap<>();
        try (Statement statement = store.createStatement();
                ResultSet rows = statement.executeQuery(sql)) {
            while (rows.next()) {
                texts.put(rows.getObject(1, UUID.class), rows.getString(2));
            }
        }
        return texts;
    }
}
