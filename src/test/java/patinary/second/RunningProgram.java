package patinary.second;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import patinary.testing.JarProgram;
import patinary.testing.TestDatabase;

/** The packaged program, used through its doors: an archive goes in by command, postings are read from its database. */
final class RunningProgram {

    private static final String URL = "spring.datasource.url";

    private final Map<String, String> settings;

    private RunningProgram(Map<String, String> settings) {
        this.settings = settings;
    }

    /** On the database that the run of the tests is for. */
    static RunningProgram loadedWith(Path archive, Path data) throws IOException, InterruptedException {
        Path log = data.resolveSibling(data.getFileName() + ".log");
        List<String> settings = TestDatabase.scratch(data);
        if (JarProgram.run(log, settings, "load", archive.toString()) != 0) {
            throw new IllegalStateException("not loaded:\n" + Files.readString(log));
        }
        return new RunningProgram(settings.stream()
                .map(setting -> setting.split("=", 2))
                .collect(Collectors.toMap(setting -> setting[0], setting -> setting[1])));
    }

    /** Copies the program's postings next to the second road's own books. */
    void copyPostingsInto(SecondBooks books) throws SQLException {
        try (Connection program = connection();
                Statement statement = program.createStatement();
                ResultSet posting = statement.executeQuery("""
                        select document_id, doc_date, account, place_id, category, piece_id, supply_id, amount_minor, quantity,
                               origin_id
                        from posting""")) {
            while (posting.next()) {
                books.run(
                        "insert into posting values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                        posting.getString(1),
                        posting.getDate(2),
                        posting.getString(3),
                        posting.getString(4),
                        posting.getString(5),
                        posting.getString(6),
                        posting.getString(7),
                        posting.getLong(8),
                        posting.getBigDecimal(9),
                        posting.getString(10));
            }
        }
    }

    private Connection connection() throws SQLException {
        if (settings.containsKey(URL)) {
            return DriverManager.getConnection(
                    settings.get(URL),
                    settings.get("spring.datasource.username"),
                    settings.get("spring.datasource.password"));
        }
        String file = Path.of(settings.get("patinary.data")).toAbsolutePath() + "/shop";
        return DriverManager.getConnection("jdbc:h2:file:" + file + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE", "sa", "");
    }
}
