package patinary.taxyear;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.taxbasis.BasisBook;
import patinary.taxyear.YearRows.Posted;
import patinary.web.CsvFile;

/** The year's records as tables for the accountant. Each adds up to the year's page and to the ledger. */
@Service
@Transactional(readOnly = true)
class YearFiles {

    /** The names of the files, in the order of the folder. */
    static final List<String> NAMES = List.of(
            "income",
            "purchases-and-cost",
            "expenses",
            "stock",
            "taken-for-own-use",
            "received-free",
            "tax-adjustments",
            "journal");

    private final YearRows rows;
    private final YearBooks books;
    private final Years years;
    private final BasisBook basis;
    private final CurrentShop shop;

    YearFiles(YearRows rows, YearBooks books, Years years, BasisBook basis, CurrentShop shop) {
        this.rows = rows;
        this.books = books;
        this.years = years;
        this.basis = basis;
        this.shop = shop;
    }

    /** One of the files by its name. */
    CsvFile file(int year, String name) {
        return switch (name) {
            case "income" -> lines(year, "INCOME", -1);
            case "purchases-and-cost" -> purchasesAndCost(year);
            case "expenses" -> lines(year, "EXPENSE", 1);
            case "stock" -> stock(year);
            case "taken-for-own-use" -> taken(year);
            case "received-free" -> received(year);
            case "tax-adjustments" -> TaxAdjustmentsFile.of(shop.currency(), years.table(year), basis.year(year));
            case "journal" -> journal(year);
            default -> throw new IllegalArgumentException("No file of the year is named " + name);
        };
    }

    /** All files in one folder. */
    byte[] folder(int year) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        NAMES.forEach(
                name -> files.put(year + "/" + name + ".csv", file(year, name).bytes()));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                ZipEntry entry = new ZipEntry(file.getKey());
                // The same year gives the same folder: no moment of packing in it.
                entry.setTimeLocal(books.last(year).atStartOfDay());
                zip.putNextEntry(entry);
                zip.write(file.getValue());
                zip.closeEntry();
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    /** Income is positive and refunds negative; expenses are positive. */
    private CsvFile lines(int year, String part, int sign) {
        TaxTable table = years.table(year);
        CsvFile file = new CsvFile(
                shop.currency(),
                "date",
                "document",
                "kind",
                "account",
                "category",
                "tax_line",
                "meaning",
                "piece_code",
                "title",
                "note",
                "amount");
        for (Posted row : rows.part(year, part)) {
            String meaning = table.meaning(row.account(), row.category()).orElse("");
            file.row(
                    row.docDate(),
                    row.documentId(),
                    row.kind(),
                    row.account(),
                    row.category(),
                    table.line(meaning).map(TaxLine::line).orElse(""),
                    meaning,
                    row.pieceCode(),
                    title(row),
                    row.note(),
                    Amount.of(sign * row.amountMinor()));
        }
        return file;
    }

    /** Each word under "what" adds up to its own figure of the year's page. */
    private CsvFile purchasesAndCost(int year) {
        CsvFile file = new CsvFile(
                shop.currency(),
                "what",
                "date",
                "document",
                "kind",
                "account",
                "category",
                "piece_code",
                "title",
                "note",
                "amount");
        rows.purchases(year).forEach(row -> cost(file, String.valueOf(row.purchase()), row));
        rows.part(year, "COST").forEach(row -> cost(file, "COST", row));
        rows.part(year, "OWN_USE").forEach(row -> cost(file, "OWN_USE", row));
        rows.packed(year).forEach(row -> cost(file, "PACKED", row));
        return file;
    }

    private static void cost(CsvFile file, String what, Posted row) {
        file.row(
                what,
                row.docDate(),
                row.documentId(),
                row.kind(),
                row.account(),
                row.category(),
                row.pieceCode(),
                title(row),
                row.note(),
                Amount.of(row.amountMinor()));
    }

    private CsvFile stock(int year) {
        CsvFile file = new CsvFile(shop.currency(), "day", "account", "piece_code", "title", "quantity", "cost");
        for (YearBooks.StockRow row : books.stock(books.last(year))) {
            file.row(
                    books.last(year),
                    row.account(),
                    row.code(),
                    row.title(),
                    row.account().equals("PIECES") ? null : row.quantity(),
                    Amount.of(row.amountMinor()));
        }
        return file;
    }

    /** For the tax on own use, which the state's rules decide on: each taking at cost. */
    private CsvFile taken(int year) {
        CsvFile file = new CsvFile(
                shop.currency(),
                "date",
                "document",
                "supply_line",
                "supply",
                "measured_by",
                "quantity",
                "tax_on_own_use_may_be_owed",
                "note",
                "cost");
        for (YearBooks.Taken row : books.taken(year)) {
            file.row(
                    row.docDate(),
                    row.takingId(),
                    row.supplyLine(),
                    row.supply(),
                    row.dimension(),
                    row.quantity(),
                    row.ownUseTax(),
                    row.note(),
                    Amount.of(row.costMinor()));
        }
        return file;
    }

    private CsvFile journal(int year) {
        CsvFile file = new CsvFile(
                shop.currency(),
                "date",
                "kind",
                "document",
                "line",
                "account",
                "category",
                "place",
                "piece_code",
                "title",
                "party",
                "origin",
                "estimated",
                "quantity",
                "amount",
                "note");
        for (Posted row : rows.all(year)) {
            file.row(
                    row.docDate(),
                    row.kind(),
                    row.documentId(),
                    row.line(),
                    row.account(),
                    row.category(),
                    row.place(),
                    row.pieceCode(),
                    title(row),
                    row.party(),
                    row.originId(),
                    row.estimated(),
                    row.quantity(),
                    Amount.of(row.amountMinor()),
                    row.note());
        }
        return file;
    }

    /** What came free, with what it would have cost; of that, only what was for work done is income. */
    private CsvFile received(int year) {
        CsvFile file = new CsvFile(
                shop.currency(), "date", "document", "from", "supply", "value", "for_work_done", "income", "note");
        for (YearBooks.Received row : books.received(year)) {
            file.row(
                    row.docDate(),
                    row.giftId(),
                    row.giver(),
                    row.supply(),
                    Amount.of(row.valueMinor()),
                    row.forWork(),
                    Amount.of(row.incomeMinor()),
                    row.note());
        }
        return file;
    }

    private static String title(Posted row) {
        String piece = row.pieceTitle() == null ? "" : row.pieceTitle();
        String supply = row.supply() == null ? "" : row.supply();
        return piece.isEmpty() || supply.isEmpty() ? piece + supply : piece + " / " + supply;
    }
}
