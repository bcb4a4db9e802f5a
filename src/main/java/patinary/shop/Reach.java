package patinary.shop;

import static patinary.shop.Visitor.ACCOUNTANT;
import static patinary.shop.Visitor.HELPER;
import static patinary.shop.Visitor.STRANGER;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.http.server.PathContainer;
import org.springframework.web.util.pattern.PathPattern;
import org.springframework.web.util.pattern.PathPatternParser;
import patinary.web.Ids;
import patinary.web.PhonePages;

/**
 * Who may do what, in one table: which pages each kind of visitor may read and to which she may send a change. What is not
 * here is the owner's alone (OWASP ASVS 5.0, 8.2.1 and 8.2.2: access by explicit permission). The first row that fits a path
 * counts. Read by the doors before every request, and by the pages, which leave out the ways that are closed.
 */
final class Reach {

    /** Which kinds of request a row lets through. */
    private enum May {
        READ(Set.of("GET", "HEAD")),
        CHANGE(Set.of("POST")),
        BOTH(Set.of("GET", "HEAD", "POST")),
        NOTHING(Set.of());

        private final Set<String> methods;

        May(Set<String> methods) {
            this.methods = methods;
        }
    }

    private record Row(PathPattern path, May may, Set<Visitor> who) {

        boolean opens(Visitor visitor, String method) {
            return who.contains(visitor) && may.methods.contains(method);
        }
    }

    private static final Set<Visitor> ALL = Set.of(STRANGER, ACCOUNTANT, HELPER);
    private static final Set<Visitor> NOT_IN_A_YEAR = Set.of(STRANGER, HELPER);
    private static final Set<Visitor> READERS = Set.of(ACCOUNTANT, HELPER);
    private static final Set<Visitor> HELPERS = Set.of(HELPER);

    private static final List<Row> TABLE = Stream.of(
                    rows(May.READ, ALL, "/help", "/css/**", "/js/**", "/img/**", "/manifest.webmanifest", "/error"),
                    rows(May.BOTH, NOT_IN_A_YEAR, "/setup", "/sign-in", "/way-in"),
                    rows(May.READ, NOT_IN_A_YEAR, "/trust/**", "/actuator/health", "/phone/token", "/sw.js"),
                    rows(May.READ, NOT_IN_A_YEAR, "/for-the-accountant/{secret}"),
                    // The rest of a phone's page is filled after the sign-in; without one it is a shell.
                    PhonePages.ALL.stream().flatMap(page -> rows(May.READ, Set.of(STRANGER), page)),
                    rows(May.CHANGE, READERS, "/sign-out"),
                    rows(May.CHANGE, NOT_IN_A_YEAR, "/passkey", "/passkey/options"),
                    // Her own way to sign in, and showing that it is her.
                    rows(May.BOTH, HELPERS, "/me/**", "/prove", "/prove/passkey"),
                    rows(May.READ, READERS, "/guide/**", "/handbook/**"),
                    // The years: not their seal, nor what is open in one, which names buyers.
                    rows(May.NOTHING, Set.of(), "/year/{year}/seal/**", "/year/{year}/open/**"),
                    rows(May.READ, Set.of(ACCOUNTANT), "/year/**"),
                    recording(),
                    looking())
            .flatMap(rows -> rows)
            .toList();

    private Reach() {}

    /** Whether a visitor may send a request by this method to this path. */
    static boolean isOpen(Visitor visitor, String method, PathContainer path) {
        if (visitor == Visitor.OWNER) {
            return true;
        }
        // A path may have one row for strangers and another for a helper; rows for nobody close a path that a later row
        // opens.
        return TABLE.stream()
                .filter(row -> row.path.matches(path) && (row.who.isEmpty() || row.who.contains(visitor)))
                .findFirst()
                .filter(row -> row.opens(visitor, method))
                .isPresent();
    }

    /** What a helper records: purchases, work, sales, counts, pictures, where things are. */
    private static Stream<Row> recording() {
        return Stream.of(
                        PhonePages.ALL.stream().flatMap(page -> rows(May.BOTH, HELPERS, page)),
                        rows(May.CHANGE, HELPERS, "/bench/now/undo", "/bench/clock", "/stall/{sale}/undo"),
                        rows(May.READ, HELPERS, "/stall/sold/{code}", "/phone/lists", "/phone/sign-in"),
                        // Taking a record away, and changing a purchase or a sale, is the owner's.
                        rows(May.BOTH, HELPERS, "/receipts", "/receipts/new"),
                        rows(May.BOTH, HELPERS, "/receipts/read", "/receipts/read/{photo}"),
                        rows(May.BOTH, HELPERS, "/bench/new", "/bench/{id}/edit"),
                        rows(May.BOTH, HELPERS, "/sales/new", "/sales/{id}/packing"),
                        rows(May.CHANGE, HELPERS, "/sales/{id}/posted", "/sending/{id}/packed", "/sending/{id}/sent"),
                        rows(May.BOTH, HELPERS, "/supplies/{supply}/count"),
                        rows(May.BOTH, HELPERS, "/pieces/{id}/edit", "/pieces/{id}/size"),
                        rows(May.BOTH, HELPERS, "/photos/match", "/photos/new", "/photos"),
                        rows(May.CHANGE, HELPERS, "/photos/{id}/arrange"),
                        rows(May.BOTH, HELPERS, "/places/move", "/market-days/{id}/add"),
                        rows(May.CHANGE, HELPERS, "/market-days/{id}/pieces/{piece}/{turn}"))
                .flatMap(rows -> rows);
    }

    /** What a helper looks at. These pages leave costs and profit out for her. */
    private static Stream<Row> looking() {
        return Stream.of(
                        rows(May.READ, HELPERS, "/", "/on-the-shelf/{list}", "/bench", "/bench/{id}", "/receipts/{id}"),
                        rows(May.READ, HELPERS, "/pieces", "/pieces/{id}", "/photos/{id}/{size}"),
                        rows(May.READ, HELPERS, "/supplies", "/supplies/shelf-life", "/supplies/{id}"),
                        rows(May.READ, HELPERS, "/supplies/counts/{id}", "/buying-list", "/mixes"),
                        rows(May.READ, HELPERS, "/finishes", "/finishes/{id}", "/finishes/{id}/print"),
                        rows(May.READ, HELPERS, "/offers", "/offers/{id}", "/sales", "/sales/{id}", "/sending"),
                        rows(May.READ, HELPERS, "/places", "/places/one", "/p", "/p/{code}"),
                        rows(May.READ, HELPERS, "/labels", "/labels/sheet", "/labels/sheet.pdf"),
                        rows(May.READ, HELPERS, "/market-days", "/market-days/{id}"))
                .flatMap(rows -> rows);
    }

    /** An id is one in the table too: a word at its place is another page, and closed. */
    private static Stream<Row> rows(May may, Set<Visitor> who, String... paths) {
        return Arrays.stream(paths)
                .map(path -> path.replace("/{id}", Ids.PATH))
                .map(path -> new Row(PathPatternParser.defaultInstance.parse(path), may, who));
    }
}
