package patinary.whole;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import patinary.testing.JarProgram;
import patinary.testing.TestDatabase;
import patinary.testing.Visitor;

/** A server of its own and so many copies of the packaged program on its one database, with one folder for their photos. */
final class ManyCopies implements AutoCloseable {

    private final Path folder;
    private final ForcingServer server;
    private final List<JarProgram> programs = new ArrayList<>();
    private final List<String> properties;

    private ManyCopies(Path folder) throws IOException {
        this.folder = folder;
        server = new ForcingServer(folder.resolve("server"));
        server.start();
        properties = List.of(
                "patinary.setup-code=" + TestDatabase.SETUP_CODE,
                "patinary.data=" + folder,
                "spring.datasource.url=" + server.url(),
                "spring.datasource.username=postgres",
                "spring.datasource.password=",
                // What each does by itself is tried by all of them all the time, and told of where it is done.
                "patinary.backups.look=PT0.5S",
                "patinary.photos.first-sweep=PT2S",
                "logging.level.patinary.jobs=DEBUG");
    }

    static ManyCopies start(Path folder, int count) throws IOException, InterruptedException {
        ManyCopies copies = new ManyCopies(folder);
        try {
            for (int copy = 0; copy < count; copy++) {
                copies.programs.add(JarProgram.start(copies.log(copy), copies.properties));
            }
            return copies;
        } catch (IOException | RuntimeException failed) {
            copies.close();
            throw failed;
        }
    }

    /** The same browser's window at a copy, in turn. */
    Visitor window(Visitor signedIn, int number) {
        return signedIn.beside(port(number));
    }

    int port(int number) {
        return programs.get(number % programs.size()).port();
    }

    String url() {
        return server.url();
    }

    /** What is wrong in the store itself. */
    AfterDeath look() {
        return new AfterDeath(folder, server.url());
    }

    /** Rebuilds the books beside the copies and compares. @return 0 where they are right */
    int check() throws IOException, InterruptedException {
        return JarProgram.run(folder.resolve("check.log"), properties, "check");
    }

    /** How many daily backups were made, by all copies together. */
    long backups() throws SQLException {
        try (Connection store = DriverManager.getConnection(server.url(), "postgres", "");
                Statement statement = store.createStatement();
                ResultSet rows = statement.executeQuery("select count(*) from backup_run where what = 'BACKUP'")) {
            rows.next();
            return rows.getLong(1);
        }
    }

    /** How often the folder of photos was swept, by all copies together. */
    long sweeps() throws IOException {
        Pattern line = Pattern.compile(" photo-sweep is done by this copy");
        long times = 0;
        for (int copy = 0; copy < programs.size(); copy++) {
            times += line.matcher(Files.readString(log(copy))).results().count();
        }
        return times;
    }

    private Path log(int copy) {
        return folder.resolve("program-" + copy + ".log");
    }

    @Override
    public void close() throws IOException, InterruptedException {
        for (JarProgram program : programs) {
            program.close();
        }
        server.close();
    }
}
