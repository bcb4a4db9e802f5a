package patinary.yearfolder;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;
import org.postgresql.PGConnection;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import patinary.Patinary;
import patinary.shop.CurrentShop;

/**
 * Measures the export of a year of 1,000,000 postings against what the database itself takes to write the rows of the very
 * same query as CSV, in the same run. Run by {@code .ci/measure-year-folder}, by hand.
 */
public final class MeasureYearFolder {

    private static final int DOCUMENTS = Integer.getInteger("patinary.documents", 250_000);
    private static final int PIECES = 20_000;
    private static final int RUNS = 3;

    private static final String ID = "cast('%s-0000-4000-8000-' || lpad(cast(%s as varchar(12)), 12, '0') as uuid)";

    private final Path work;
    private final boolean h2;
    private final JdbcTemplate jdbc;
    private final YearFolder folder;

    private MeasureYearFolder(Path work, boolean h2, ConfigurableApplicationContext program) {
        this.work = work;
        this.h2 = h2;
        this.jdbc = new JdbcTemplate(program.getBean(DataSource.class));
        this.folder = program.getBean(YearFolder.class);
    }

    /** @param arguments h2 or postgresql, and a folder to work in */
    public static void main(String[] arguments) throws Exception {
        boolean h2 = arguments[0].equals("h2");
        Path work = Path.of(arguments[1]);
        List<String> settings = new ArrayList<>(List.of("--server.port=0", "--patinary.data=" + work.resolve("data")));
        try (EmbeddedPostgres server = h2 ? null : EmbeddedPostgres.start()) {
            if (server != null) {
                settings.add("--spring.datasource.url=" + server.getJdbcUrl("postgres", "postgres"));
                settings.add("--spring.datasource.username=postgres");
            }
            try (ConfigurableApplicationContext program =
                    SpringApplication.run(Patinary.class, settings.toArray(String[]::new))) {
                MeasureYearFolder measure = new MeasureYearFolder(work, h2, program);
                measure.fill();
                program.getBean(CurrentShop.class).changed();
                measure.measure();
            }
        }
        System.exit(0);
    }

    private String series(int to) {
        return h2 ? "(select x from system_range(1, " + to + ")) s" : "generate_series(1, " + to + ") as s(x)";
    }

    private static String id(String kind, String number) {
        return ID.formatted(kind, number);
    }

    /** Sales of one piece each, invented: money in, sales, cost out of stock. */
    private void fill() {
        jdbc.update(
                "insert into shop (id, name, currency, minor_digits, costing_method, hourly_rate_minor, tax_table, first_day,"
                        + " time_zone, created_at, version) values (1, 'Measured (invented)', 'USD', 2, 'FIFO', 2000, 'us-schedule-c',"
                        + " date '2025-01-01', 'America/New_York', timestamp '2025-01-01 12:00:00', 0)");
        jdbc.update("insert into money_place (id, name, kind, version) values (" + id("00000001", "1")
                + ", 'Cash box', 'CASH', 0)");
        jdbc.update("insert into piece (id, code, title, material, place, note, version) select " + id("00000002", "x")
                + ", 'P' || cast(x as varchar(12)), 'Tray number ' || cast(x as varchar(12)), '', '', '', 0 from "
                + series(PIECES));
        jdbc.update("insert into document (id, kind, kind_rank, doc_date, note, recorded_at, version) select "
                + id("00000003", "x")
                + ", 'SALE', 9, date '2025-01-01' + cast(mod(x, 365) as integer), 'Sold at the stall',"
                + " timestamp '2025-01-01 12:00:00', 0 from " + series(DOCUMENTS));
        posting(0, "MONEY", "1000 + mod(x, 900)", id("00000001", "1"), "null");
        posting(1, "SALES", "-1000 - mod(x, 900)", "null", "null");
        posting(2, "PIECES", "-500 - mod(x, 90)", "null", id("00000002", "1 + mod(x, " + PIECES + ")"));
        posting(3, "COST_OF_PIECES", "500 + mod(x, 90)", "null", id("00000002", "1 + mod(x, " + PIECES + ")"));
        jdbc.execute("analyze");
    }

    private void posting(int line, String account, String amount, String place, String piece) {
        jdbc.update(
                "insert into posting (document_id, line, doc_date, account, place_id, piece_id, estimated, amount_minor,"
                        + " quantity) select " + id("00000003", "x") + ", " + line
                        + ", date '2025-01-01' + cast(mod(x, 365) as integer), '" + account + "', cast(" + place
                        + " as uuid), cast(" + piece + " as uuid), false, " + amount + ", 0 from " + series(DOCUMENTS));
    }

    private void measure() throws Exception {
        System.out.printf(
                "%s, %,d postings, heap at most %d MB%n",
                h2 ? "H2" : "PostgreSQL",
                jdbc.queryForObject("select count(*) from posting", Long.class),
                Runtime.getRuntime().maxMemory() >> 20);
        for (int i = 0; i < RUNS; i++) {
            double own = seconds(this::byTheDatabase);
            double ours = seconds(() -> write("journal.csv", out -> folder.table(2025, "journal", out)));
            System.out.printf(
                    "journal: database %.1f s (%,d bytes), program %.1f s (%,d bytes), ratio %.2f%n",
                    own,
                    Files.size(work.resolve("own.csv")),
                    ours,
                    Files.size(work.resolve("journal.csv")),
                    ours / own);
        }
        System.out.printf("workbook: %.1f s%n", seconds(() -> write("2025.xlsx", out -> folder.workbook(2025, out))));
        System.out.printf("folder: %.1f s%n", seconds(() -> write("2025.zip", out -> folder.folder(2025, out))));
        System.out.printf(
                "most of the heap ever in use: %d MB%n",
                ManagementFactory.getMemoryPoolMXBeans().stream()
                        .filter(pool -> pool.getType() == java.lang.management.MemoryType.HEAP)
                        .map(MemoryPoolMXBean::getPeakUsage)
                        .mapToLong(usage -> usage.getUsed() >> 20)
                        .sum());
    }

    /** The same query, written by the database as it writes CSV. */
    private void byTheDatabase() throws SQLException, IOException {
        String query =
                ProfitTables.POSTINGS.replace(":first", "date '2025-01-01'").replace(":last", "date '2025-12-31'");
        Path file = work.resolve("own.csv");
        DataSource store = java.util.Objects.requireNonNull(jdbc.getDataSource());
        try (Connection connection = store.getConnection();
                Statement sql = connection.createStatement();
                OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            if (h2) {
                sql.execute("call csvwrite('" + file + "', '" + query.replace("'", "''") + "', 'charset=UTF-8')");
            } else {
                connection
                        .unwrap(PGConnection.class)
                        .getCopyAPI()
                        .copyOut("copy (" + query + ") to stdout with (format csv, header)", out);
            }
        }
    }

    private void write(String name, FolderZip.Content content) throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(work.resolve(name)))) {
            content.to(out);
        }
    }

    @FunctionalInterface
    private interface Work {
        void run() throws Exception;
    }

    private static double seconds(Work work) throws Exception {
        long begin = System.nanoTime();
        work.run();
        return (System.nanoTime() - begin) / 1e9;
    }
}
