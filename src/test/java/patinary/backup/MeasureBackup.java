package patinary.backup;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.util.FileSystemUtils;
import patinary.Patinary;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.invented.InventedShop;
import patinary.photos.DrawnPhotos;
import patinary.testing.TestDatabase;

/**
 * How long a backup of an invented shop takes to be written, to be read back, to be rehearsed and to be restored into an empty shop, how
 * large it is, and how much memory each step needs at most. {@code .ci/measure-backup} runs it; every step is done once, as it is in life.
 */
final class MeasureBackup {

    private static final int USUAL_PIECES = 2_000;
    private static final double BILLION = 1e9;

    /** A step that is measured. */
    @FunctionalInterface
    private interface Step {

        void go() throws IOException;
    }

    private MeasureBackup() {}

    /** @param arguments how many pieces are to be invented; or settings that say where a shop is that load has made */
    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createTempDirectory("patinary-backup");
        try {
            System.out.println("| what | time | most heap |\n|---|---|---|");
            Path backup = folder.resolve("shop-backup.zip");
            if (arguments.length > 0 && arguments[0].startsWith("--")) {
                try (ConfigurableApplicationContext program = program(Stream.of(arguments))) {
                    write(program, backup);
                }
            } else {
                invent(arguments.length > 0 ? Integer.parseInt(arguments[0]) : USUAL_PIECES, folder, backup);
            }
            restore(folder, backup);
        } finally {
            FileSystemUtils.deleteRecursively(folder);
        }
        // The unpacked database would keep the program running.
        System.exit(0);
    }

    private static void invent(int pieces, Path folder, Path backup) throws IOException {
        Path invented = folder.resolve("invented.zip");
        new InventedShop(1, pieces).write(invented);
        try (ConfigurableApplicationContext program = program(scratch(folder.resolve("first")))) {
            ShopArchive archive = program.getBean(ShopArchive.class);
            measure("the invented archive, without photos, is taken in", () -> archive.load(invented, Progress.SILENT));
            measure("its photos are hung", program.getBean(DrawnPhotos.class)::hang);
            write(program, backup);
        }
    }

    private static void write(ConfigurableApplicationContext program, Path backup) throws IOException {
        ShopArchive archive = program.getBean(ShopArchive.class);
        measure("the backup is written", () -> {
            try (OutputStream file = Files.newOutputStream(backup)) {
                archive.backup(file, Progress.SILENT);
            }
        });
        measure("it is read back", () -> ShopArchive.readBack(backup));
        measure("it is rehearsed (a process of its own, 768 MB)", () -> {
            ProofReport report = program.getBean(ProofProcess.class).prove(backup);
            if (!report.good()) {
                throw new IllegalStateException(report.told());
            }
        });
        JdbcClient jdbc = program.getBean(JdbcClient.class);
        System.out.printf(
                "%,d documents, %,d photos in %,d pictures of %.1f MB; the backup has %.1f MB%n",
                count(jdbc, "select count(*) from document"),
                count(jdbc, "select count(*) from photo"),
                count(jdbc, "select count(distinct sha256) from photo"),
                count(jdbc, "select coalesce(sum(bytes), 0) from (select distinct sha256, bytes from photo) one") / 1e6,
                Files.size(backup) / 1e6);
    }

    private static void restore(Path folder, Path backup) throws IOException {
        try (ConfigurableApplicationContext program = program(scratch(folder.resolve("second")))) {
            ShopArchive archive = program.getBean(ShopArchive.class);
            measure("it is restored into an empty shop", () -> archive.load(backup, Progress.SILENT));
        }
    }

    private static Stream<String> scratch(Path data) {
        return Stream.concat(Stream.of("patinary.data=" + data), TestDatabase.scratch(data).stream())
                .map(setting -> "--" + setting);
    }

    private static ConfigurableApplicationContext program(Stream<String> settings) {
        return new SpringApplicationBuilder(Patinary.class)
                .run(Stream.concat(Stream.of("--server.port=0", "--patinary.backups.by-itself=false"), settings)
                        .toArray(String[]::new));
    }

    private static long count(JdbcClient jdbc, String query) {
        return jdbc.sql(query).query(Long.class).single();
    }

    private static void measure(String what, Step step) throws IOException {
        List<MemoryPoolMXBean> heap = ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .toList();
        System.gc();
        heap.forEach(MemoryPoolMXBean::resetPeakUsage);
        long start = System.nanoTime();
        step.go();
        double seconds = (System.nanoTime() - start) / BILLION;
        long most = heap.stream()
                .mapToLong(pool -> pool.getPeakUsage().getUsed() >> 20)
                .sum();
        System.out.printf("| %s | %.1f s | %,d MB |%n", what, seconds, most);
    }
}
