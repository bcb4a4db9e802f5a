package patinary.shop;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.http.server.PathContainer;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.FactorGrantedAuthority;
import org.springframework.web.util.pattern.PathPattern;
import org.springframework.web.util.pattern.PathPatternParser;

/**
 * What a device left open is not enough for, in one table: before these a person shows once more that it is her, unless she did
 * so within ten minutes (OWASP ASVS 5.0, 7.5.1 and 7.5.3: full proof before sign-in settings and highly sensitive steps; the ten
 * minutes are our choice). An accountant is not asked: her link is all she has, and it only reads.
 */
final class Proofs {

    static final Duration FRESH = Duration.ofMinutes(10);

    private static final Set<String> READING = Set.of("GET", "HEAD");
    private static final Set<String> EVERY = Set.of("GET", "HEAD", "POST");

    /**
     * A row of the table.
     *
     * @param page where a person is led back to when what she sent cannot be sent again
     */
    record Row(Set<String> methods, PathPattern path, String page) {}

    private static final List<Row> TABLE = Stream.of(
                    // The whole shop going out, or another coming in.
                    row(EVERY, "/shop/archive", "/shop/archive"),
                    row(READING, "/shop/archive/download", "/shop/archive"),
                    row(READING, "/shop/backups/download", "/shop/backups"),
                    row(EVERY, "/shop/backups/restore", "/shop/backups/restore"),
                    // Where the whole shop goes every night.
                    row(EVERY, "/shop/backups/plan", "/shop/backups"),
                    // Who may come in.
                    row(EVERY, "/shop/people/**", "/shop/people"),
                    row(EVERY, "/shop/accountant/**", "/shop/accountant"),
                    // Her own way to sign in.
                    row(EVERY, "/me/**", "/me"),
                    // Sealing a year, and taking its seal off.
                    row(EVERY, "/year/{year}/seal/**", "/year"),
                    // A whole year going out.
                    row(READING, "/year/{year}.zip", "/year"),
                    row(READING, "/year/{year}.xlsx", "/year"))
            .toList();

    private Proofs() {}

    /** The row that asks for proof before a request, if one does. */
    static Optional<Row> before(String method, PathContainer path) {
        return TABLE.stream()
                .filter(row -> row.methods.contains(method) && row.path.matches(path))
                .findFirst();
    }

    /** Whether somebody showed lately that it is her. */
    static boolean isFresh(Authentication who, Instant now) {
        return who.getAuthorities().stream()
                .filter(FactorGrantedAuthority.class::isInstance)
                .map(one -> ((FactorGrantedAuthority) one).getIssuedAt())
                .max(Comparator.naturalOrder())
                .filter(shown -> shown.plus(FRESH).isAfter(now))
                .isPresent();
    }

    private static Row row(Set<String> methods, String path, String page) {
        return new Row(methods, PathPatternParser.defaultInstance.parse(path), page);
    }
}
