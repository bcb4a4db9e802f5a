package patinary.yearfolder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import patinary.exchange.Errands;
import patinary.shop.CurrentShop;
import patinary.taxyear.YearPage;
import patinary.taxyear.Years;
import patinary.testing.ShopTest;

/**
 * The folder of the demo's year, added up on three roads of its own that share nothing with the page: by the formulas of its
 * workbook (evaluated by Apache POI and by LibreOffice), and in SQL from its tables alone. All come to the page's lines to the
 * cent. Everything is invented.
 */
@ShopTest(open = false)
class YearFolderIT {

    private static final int YEAR = 2025;

    /** Counted by cash received, so that tax has something otherwise than the books. */
    private static final int BY_CASH = 2026;

    @TempDir
    Path disk;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Errands errands;

    @Autowired
    private Years years;

    @Autowired
    private CurrentShop shop;

    private UnpackedFolder folder;

    @BeforeEach
    void packTheYear() throws Exception {
        assertThat(errands.load("db/demo")).isTrue();
        folder = folder(YEAR);
    }

    @Test
    void everyRoadComesToTheLinesOfThePageAndSeesAFault() throws Exception {
        everyRoadComesToTheLinesOfThePage(YEAR, folder);
        UnpackedFolder byCash = folder(BY_CASH);
        assertThat(byCash.table("tax-adjustments")).isNotEmpty();
        everyRoadComesToTheLinesOfThePage(BY_CASH, byCash);
        aFaultInATableIsNoticed();
    }

    private void everyRoadComesToTheLinesOfThePage(int year, UnpackedFolder folder) throws Exception {
        Map<String, BigDecimal> page = page(year);
        assertThat(page).hasSizeGreaterThan(20);
        assertThat(page.get("net_profit")).isNotEqualByComparingTo("0");
        assertThat(lines(folder.table("lines"))).as("lines.csv").isEqualTo(page);
        assertThat(SecondRoad.disagreements(folder.path()))
                .as("SQL over the tables")
                .isEmpty();
        assertThat(workbook(folder.file(year + ".xlsx"), page))
                .as("formulas by POI")
                .isEqualTo(page);
        if ("h2".equals(System.getProperty("patinary.test.database", "h2")) && Office.isThere()) {
            assertThat(lines(Office.sheet(folder.file(year + ".xlsx"), disk, "lines", 3)))
                    .as("formulas by the office program")
                    .isEqualTo(page);
        }
    }

    private void aFaultInATableIsNoticed() throws Exception {
        for (String fault :
                List.of("income", "expenses", "purchases-and-cost", "stock", "stock-how-it-arose", "journal")) {
            Path file = folder.file(fault + ".csv");
            List<String> right = Files.readAllLines(file);
            int at = right.size() / 2;
            Files.write(file, without(right, at));
            assertThat(SecondRoad.disagreements(folder.path()))
                    .as("a row of %s is missing", fault)
                    .isNotEmpty();
            Files.write(file, aCentMore(right, at));
            assertThat(SecondRoad.disagreements(folder.path()))
                    .as("a cent more in %s", fault)
                    .isNotEmpty();
            Files.write(file, right);
        }
        assertThat(SecondRoad.disagreements(folder.path())).isEmpty();
    }

    @Test
    void theFolderIsWholeAndEachFileOfItCanBeSavedAlone() throws Exception {
        theManifestNamesEveryFileAndItsHash();
        theSameYearGivesTheSameTables();
        oneTableOrTheWorkbookCanBeSavedAlone();
    }

    private void theManifestNamesEveryFileAndItsHash() throws Exception {
        Manifest manifest =
                Manifest.read(Files.readAllBytes(folder.file(Manifest.NAME))).orElseThrow();
        assertThat(manifest.entries())
                .extracting(Manifest.Entry::name)
                .containsExactlyElementsOf(folder.names().stream()
                        .filter(name -> !name.equals(Manifest.NAME) && !name.equals("summary.pdf"))
                        .toList());
        for (Manifest.Entry entry : manifest.entries()) {
            assertThat(hash(entry.name())).as(entry.name()).isEqualTo(entry.hash());
        }
        assertThat(folder.names())
                .containsAll(
                        YearTables.NAMES.stream().map(name -> name + ".csv").toList());
        String readme = folder.text("README.txt");
        assertThat(readme).contains("not tax advice").doesNotContain("''");
        YearTables.NAMES.forEach(name -> assertThat(readme).contains(name + ".csv"));
        try (PDDocument summary = Loader.loadPDF(folder.file("summary.pdf").toFile())) {
            assertThat(new PDFTextStripper().getText(summary))
                    .contains(
                            "not tax advice",
                            shop.name(),
                            hash(Manifest.NAME),
                            "Gross receipts or sales",
                            "2025-12-31");
        }
    }

    private void theSameYearGivesTheSameTables() throws Exception {
        UnpackedFolder again = UnpackedFolder.of(answer("/year/" + YEAR + ".zip"), disk.resolve("again"));
        for (String name : folder.names()) {
            if (name.endsWith(".csv") || name.endsWith(".txt")) {
                assertThat(again.file(name)).hasSameBinaryContentAs(folder.file(name));
            }
        }
    }

    private void oneTableOrTheWorkbookCanBeSavedAlone() throws Exception {
        for (String name : YearTables.NAMES) {
            assertThat(answer("/year/" + YEAR + "/" + name + ".csv"))
                    .as(name)
                    .isEqualTo(Files.readAllBytes(folder.file(name + ".csv")));
        }
        assertThat(answer("/year/" + YEAR + ".xlsx")).isNotEmpty();
        mvc.perform(get("/year/2025/secrets.csv").with(owner())).andExpect(status().isNotFound());
        mvc.perform(get("/year/0999.zip").with(owner())).andExpect(status().isNotFound());
    }

    private Map<String, BigDecimal> page(int year) {
        Map<String, BigDecimal> amounts = new LinkedHashMap<>();
        for (YearPage.Part part : years.page(year).parts()) {
            for (YearPage.Line line : part.lines()) {
                if (line.amount() != null) {
                    amounts.put(
                            line.line().meaning(),
                            new BigDecimal(shop.currency().plain(line.amount())));
                }
            }
        }
        return amounts;
    }

    private static Map<String, BigDecimal> lines(List<CSVRecord> rows) {
        return rows.stream()
                .filter(row ->
                        !row.get("amount").isEmpty() && !row.get("meaning").startsWith("miles"))
                .collect(Collectors.toMap(
                        row -> row.get("meaning"),
                        row -> new BigDecimal(row.get("amount")).setScale(2),
                        (a, b) -> a,
                        LinkedHashMap::new));
    }

    /** The formulas of the sheet of lines, each evaluated anew. */
    private Map<String, BigDecimal> workbook(Path file, Map<String, BigDecimal> wanted) throws IOException {
        Map<String, BigDecimal> amounts = new LinkedHashMap<>();
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
            FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
            for (Row row : workbook.getSheet("lines")) {
                Cell meaning = row.getCell(4);
                if (meaning != null && wanted.containsKey(meaning.getStringCellValue())) {
                    assertThat(row.getCell(3).getCellType()).isEqualTo(CellType.FORMULA);
                    amounts.put(
                            meaning.getStringCellValue(),
                            BigDecimal.valueOf(
                                            evaluator.evaluate(row.getCell(3)).getNumberValue())
                                    .setScale(2, RoundingMode.HALF_UP));
                }
            }
            Sheet checks = workbook.getSheet("checks");
            for (int i = 1; i <= checks.getLastRowNum(); i++) {
                assertThat(evaluator.evaluate(checks.getRow(i).getCell(2)).getStringValue())
                        .as("%s", checks.getRow(i).getCell(0))
                        .isEqualTo("yes");
            }
            workbook.forEach(sheet -> sheet.forEach(row -> row.forEach(cell -> assertThat(cell.getCellType())
                    .as("%s %s", sheet.getSheetName(), cell.getAddress())
                    .matches(type -> type != CellType.FORMULA
                            || List.of("lines", "sums", "checks").contains(sheet.getSheetName())))));
        }
        return amounts;
    }

    private static List<String> without(List<String> lines, int at) {
        List<String> fewer = new java.util.ArrayList<>(lines);
        fewer.remove(at);
        return fewer;
    }

    private static List<String> aCentMore(List<String> lines, int at) {
        List<String> wrong = new java.util.ArrayList<>(lines);
        java.util.regex.Matcher last =
                java.util.regex.Pattern.compile("^(.*,)(-?\\d+\\.\\d\\d)(.*)$").matcher(wrong.get(at));
        assertThat(last.matches()).as(wrong.get(at)).isTrue();
        wrong.set(at, last.group(1) + new BigDecimal(last.group(2)).add(new BigDecimal("0.01")) + last.group(3));
        return wrong;
    }

    private String hash(String name) throws Exception {
        return HexFormat.of()
                .formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(folder.file(name))));
    }

    private UnpackedFolder folder(int year) throws Exception {
        return UnpackedFolder.of(answer("/year/" + year + ".zip"), disk);
    }

    private byte[] answer(String path) throws Exception {
        return mvc.perform(get(path).with(owner()))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsByteArray();
    }
}
