package patinary.testing;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.authority.FactorGrantedAuthority;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.ledger.AfterChange;
import patinary.ledger.Turn;

/** The shop that tests work in. It and its owner are invented. */
public final class InventedShop {

    public static final String NAME = "Linden Lane Bench";
    public static final String OWNER = "Robin";
    public static final String PASSWORD = "four gulls over wet slate";
    public static final LocalDate FIRST_DAY = LocalDate.of(2025, 1, 1);

    private static @Nullable String hash;

    private InventedShop() {}

    /** A request as the owner sends it who has just signed in, with the token that changes need. */
    public static RequestPostProcessor owner() {
        return person(OWNER, "OWNER");
    }

    /** The same of a helper, whose name is Kim. */
    public static RequestPostProcessor helper() {
        return person("Kim", "HELPER");
    }

    private static RequestPostProcessor person(String name, String role) {
        FactorGrantedAuthority now = FactorGrantedAuthority.withAuthority(FactorGrantedAuthority.PASSWORD_AUTHORITY)
                .issuedAt(Instant.now())
                .build();
        return request -> SecurityMockMvcRequestPostProcessors.csrf()
                .postProcessRequest(SecurityMockMvcRequestPostProcessors.user(name)
                        .authorities(new SimpleGrantedAuthority("ROLE_" + role), now)
                        .postProcessRequest(request));
    }

    static void open(ApplicationContext program) {
        JdbcClient jdbc = program.getBean(JdbcClient.class);
        OffsetDateTime moment = Instant.parse("2025-01-01T12:00:00Z").atOffset(ZoneOffset.UTC);
        jdbc.sql("""
                        insert into person (id, name, password_hash, role, created_at, version)
                        values (?, ?, ?, 'OWNER', ?, 0)
                        """)
                .params(UUID.fromString("00000000-0000-4000-8000-000000000001"), OWNER, hash(program), moment)
                .update();
        jdbc.sql("""
                        insert into shop (id, name, currency, minor_digits, costing_method, hourly_rate_minor, tax_table,
                                          first_day, time_zone, created_at, version)
                        values (1, ?, 'USD', 2, 'FIFO', 2000, 'us-schedule-c', ?, 'America/New_York', ?, 0)
                        """).params(NAME, FIRST_DAY, moment).update();
    }

    /** Keeps the figures of what a test wrote into the tables past the books. */
    public static void keepFigures(ApplicationContext program) {
        program.getBean(TransactionTemplate.class).executeWithoutResult(status -> {
            program.getBean(Turn.class).take();
            program.getBean(AfterChange.class).booksRebuilt();
        });
    }

    private static synchronized String hash(ApplicationContext program) {
        if (hash == null) {
            hash = program.getBean(PasswordEncoder.class).encode(PASSWORD);
        }
        return hash;
    }
}
