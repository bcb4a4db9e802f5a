package patinary.yearfolder;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Lets a spreadsheet program open a workbook, reckon its formulas, and write a sheet as it would show it. Without the program
 * that road is left out with a loud message; with {@code -Dpatinary.office=required} that is a failure.
 */
final class Office {

    private static final String PROGRAM = "soffice";
    private static final int PATIENCE_SECONDS = 120;

    private Office() {}

    static boolean isThere() {
        boolean there = Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, PROGRAM)));
        if (!there) {
            String missing = "NO SPREADSHEET PROGRAM (soffice): the workbook is NOT opened in one";
            if ("required".equals(System.getProperty("patinary.office"))) {
                throw new AssertionError(missing);
            }
            System.err.println(missing);
        }
        return there;
    }

    /**
     * The rows of a sheet below its headings.
     *
     * @param above the lines above the headings
     */
    static List<CSVRecord> sheet(Path workbook, Path under, String sheet, int above)
            throws IOException, InterruptedException {
        Path out = Files.createDirectories(under.resolve("office"));
        Process program = new ProcessBuilder(
                        PROGRAM,
                        "-env:UserInstallation="
                                + under.resolve("office-profile").toUri(),
                        "--headless",
                        "--convert-to",
                        // Comma, double quote, UTF-8; formulas as values; numbers as they are, not as they look; every
                        // sheet.
                        "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1",
                        "--outdir",
                        out.toString(),
                        workbook.toString())
                .redirectErrorStream(true)
                .redirectOutput(under.resolve("office.log").toFile())
                .start();
        if (!program.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            program.destroyForcibly();
            throw new AssertionError("The spreadsheet program did not finish");
        }
        String name = workbook.getFileName().toString().replace(".xlsx", "") + "-" + sheet + ".csv";
        String text =
                Files.readString(out.resolve(name)).lines().skip(above).reduce("", (all, line) -> all + line + "\n");
        try (CSVParser parser = CSVParser.parse(
                text,
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            return parser.getRecords();
        }
    }
}
