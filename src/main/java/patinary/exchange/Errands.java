package patinary.exchange;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Service;
import patinary.ledger.Check;
import patinary.ledger.DocumentRef;
import patinary.ledger.Finding;
import patinary.photos.PhotoCheck;
import patinary.shop.CurrentShop;
import patinary.shop.FirstOwner;
import patinary.shop.WaysIn;
import patinary.web.Tongue;

/** The commands beside the server; each says on the console how it went, and returns whether it went well. */
@Service
public class Errands {

    private static final Progress ON_CONSOLE = (file, rows) -> System.err.printf("  %-28s %,d%n", file, rows);

    private final ShopArchive archive;
    private final Check check;
    private final PhotoCheck photos;
    private final CurrentShop shop;
    private final FirstOwner owner;
    private final WaysIn ways;
    private final MessageSource messages;
    private final PrintStream out = System.out;

    Errands(
            ShopArchive archive,
            Check check,
            PhotoCheck photos,
            CurrentShop shop,
            FirstOwner owner,
            WaysIn ways,
            MessageSource messages) {
        this.archive = archive;
        this.check = check;
        this.photos = photos;
        this.shop = shop;
        this.owner = owner;
        this.ways = ways;
        this.messages = messages;
    }

    public boolean load(String from) {
        Path path = Path.of(from);
        if (!Files.exists(path)) {
            say("exchange.errand.no-archive", from);
            return false;
        }
        try {
            archive.load(path, ON_CONSOLE);
        } catch (ArchiveRefused refused) {
            tell(refused);
            return false;
        } catch (IOException failed) {
            say("exchange.errand.failed", String.valueOf(failed.getMessage()));
            return false;
        }
        say("exchange.errand.loaded", shop.name());
        if (owner.isMissing()) {
            String password = FirstOwner.password();
            owner.make("Owner", password);
            say("exchange.errand.owner", "Owner", password);
        }
        return true;
    }

    /** Writes beside the target first, so that a failure never leaves half an archive under its name. */
    public boolean export(String to) {
        if (!shop.isOpen()) {
            say("exchange.errand.no-shop");
            return false;
        }
        Path target = Path.of(to).toAbsolutePath();
        try {
            if (to.endsWith(".zip")) {
                exportZip(target);
            } else {
                archive.exportFolder(target, ON_CONSOLE);
            }
        } catch (IOException failed) {
            say("exchange.errand.failed", String.valueOf(failed.getMessage()));
            return false;
        }
        say("exchange.errand.exported", to);
        return true;
    }

    public boolean check() {
        if (!shop.isOpen()) {
            say("exchange.errand.no-shop");
            return false;
        }
        List<Finding> findings = check.run();
        findings.forEach(this::tell);
        say(findings.isEmpty() ? "exchange.check.right" : "exchange.check.wrong", String.valueOf(findings.size()));
        return checkPhotos() && findings.isEmpty();
    }

    /** A file that nothing names is told, but nothing is lost by it. */
    private boolean checkPhotos() {
        List<PhotoCheck.Finding> findings = photos.run();
        for (PhotoCheck.Finding finding : findings) {
            say("exchange.check." + "photo-" + finding.what().name().toLowerCase(Locale.ROOT), finding.sha256());
        }
        long lost = findings.stream().filter(PhotoCheck.Finding::isLoss).count();
        say(lost == 0 ? "exchange.check.photos-right" : "exchange.check.photos-wrong", String.valueOf(lost));
        return lost == 0;
    }

    /** Prints a code with which a person gives herself a new password; without a name the owner. */
    public boolean wayIn(String name) {
        if (!shop.isOpen()) {
            say("exchange.errand.no-shop");
            return false;
        }
        Optional<WaysIn.Given> given = ways.give(name);
        if (given.isEmpty()) {
            say("exchange.errand.nobody", name);
            return false;
        }
        say("exchange.errand.way-in", given.get().name(), given.get().code());
        return true;
    }

    private void exportZip(Path target) throws IOException {
        Path part = Files.createTempFile(target.getParent(), "archive", ".part");
        try {
            try (OutputStream stream = new BufferedOutputStream(Files.newOutputStream(part))) {
                archive.exportZip(stream, ON_CONSOLE);
            }
            Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private void tell(ArchiveRefused refused) {
        for (ArchiveError error : refused.errors()) {
            String where = error.line() > 0 ? error.file() + ", " + error.line() : error.file();
            out.println(String.join("  ", where, error.column(), error.value(), reason(error)));
        }
        say("exchange.errand.refused", String.valueOf(refused.errors().size() + refused.more()));
    }

    private String reason(ArchiveError error) {
        return messages.getMessage(error.message(), error.arguments().toArray(), Tongue.OF_FILES);
    }

    private void tell(Finding finding) {
        DocumentRef document = finding.document();
        String where = document == null ? "" : document.kind() + " " + document.date() + " " + document.id();
        say(
                "exchange.check."
                        + finding.what().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                where,
                finding.subject(),
                finding.expected(),
                finding.found());
    }

    private void say(String key, String... arguments) {
        out.println(messages.getMessage(key, arguments, Tongue.OF_FILES));
    }
}
