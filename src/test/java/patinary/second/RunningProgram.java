package patinary.second;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** The packaged program, used through its doors: an archive goes in by command, postings are read from its database. */
final class RunningProgram {

    private final Path data;

    private RunningProgram(Path data) {
        this.data = data;
    }

    static RunningProgram loadedWith(Path archive, Path data) throws IOException, InterruptedException {
        File log = data.resolveSibling(data.getFileName() + ".log").toFile();
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-jar",
                        System.getProperty("patinary.jar", "target/patinary.jar"),
                        "load",
                        archive.toString(),
                        "--data=" + data)
                .redirectErrorStream(true)
                .redirectOutput(log)
                .start();
        if (program.waitFor() != 0) {
            throw new IllegalStateException("not loaded:\n" + java.nio.file.Files.readString(log.toPath()));
        }
        return new RunningProgram(data);
    }

    /** Copies the program's postings next to the second road's own books. */
    void copyPostingsInto(SecondBooks books) throws SQLException {
        try (Connection program = DriverManager.getConnection(
                        "jdbc:h2:file:" + data.toAbsolutePath() + "/shop;WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE",
                        "sa",
                        "");
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
}
