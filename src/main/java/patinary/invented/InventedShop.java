package patinary.invented;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import patinary.exchange.NewArchive;
import patinary.money.ShopCurrency;

/**
 * Ten years of an invented shop as an archive: for each piece on average one receipt line, two bench entries with seven and a
 * half uses, and, if it got so far, an offer and a sale. The same seed and size give the same bytes. Every row is made up when it is written, so the size
 * of the shop costs time but no memory.
 */
public final class InventedShop {

    /** So that ids and amounts of a whole shop stay within their bounds. */
    public static final int MOST_PIECES = 2_000_000;

    private final Facts facts;

    /** @throws IllegalArgumentException where there would be no piece, or more than {@link #MOST_PIECES} */
    public InventedShop(long seed, int pieces) {
        if (pieces < 1 || pieces > MOST_PIECES) {
            throw new IllegalArgumentException("From 1 to " + MOST_PIECES + " pieces can be invented, not " + pieces);
        }
        facts = Facts.of(seed, pieces);
    }

    /** Writes the archive as a zip, over a file of the same name. */
    public void write(Path zip) throws IOException {
        try (OutputStream stream = new BufferedOutputStream(Files.newOutputStream(zip))) {
            write(stream);
        }
    }

    public void write(OutputStream zip) throws IOException {
        try (NewArchive archive = new NewArchive(zip, ShopCurrency.ofCode("USD"))) {
            new ThingFiles(facts, archive).write();
            new BuyingFiles(facts, archive).write();
            new BenchFiles(facts, archive).write();
            new SellingFiles(facts, archive).write();
            new MoneyFiles(facts, archive).write();
        }
    }
}
