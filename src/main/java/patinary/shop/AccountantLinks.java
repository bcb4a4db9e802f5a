package patinary.shop;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Links that let an accountant read the years. The secret part has 256 random bits and is told once; only its SHA-256 is kept, so that
 * whoever reads the database cannot use it (OWASP ASVS 5.0, 11.5 on randomness; a slow hash adds nothing to that many bits).
 */
@Service
class AccountantLinks {

    /**
     * A link.
     *
     * @param endsOn the last day on which it opens
     * @param endedAt when the owner ended it before that, or null
     * @param lastUsedAt when it was last used, or null
     */
    record Link(
            UUID id,
            String forWhom,
            Instant madeAt,
            LocalDate endsOn,
            @Nullable Instant endedAt,
            @Nullable Instant lastUsedAt) {

        boolean isOpen(LocalDate today) {
            return endedAt == null && !today.isAfter(endsOn);
        }
    }

    private static final int SECRET_BYTES = 32;

    /** When a link was used is kept to the minute. */
    private static final Duration NOTED_EVERY = Duration.ofMinutes(1);

    private static final String LINK =
            "select id, for_whom, made_at, ends_on, ended_at, last_used_at from accountant_link ";

    private final SecureRandom random = new SecureRandom();
    private final JdbcClient jdbc;
    private final CurrentShop shop;
    private final Clock clock;

    AccountantLinks(JdbcClient jdbc, CurrentShop shop, Clock clock) {
        this.jdbc = jdbc;
        this.shop = shop;
        this.clock = clock;
    }

    /** All links, the latest first. */
    @Transactional(readOnly = true)
    public List<Link> all() {
        return jdbc.sql(LINK + "order by made_at desc, id").query(Link.class).list();
    }

    /**
     * Makes a link.
     *
     * @return its secret part, which cannot be told again
     */
    @Transactional
    public String make(String forWhom, LocalDate endsOn) {
        byte[] bytes = new byte[SECRET_BYTES];
        random.nextBytes(bytes);
        String secret = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        jdbc.sql("insert into accountant_link (id, for_whom, token_hash, made_at, ends_on) values (?, ?, ?, ?, ?)")
                .params(
                        UUID.randomUUID(),
                        forWhom,
                        Secrets.trace(secret),
                        clock.instant().atOffset(ZoneOffset.UTC),
                        endsOn)
                .update();
        return secret;
    }

    /** Ends a link at once; whoever is inside with it is out at the next page. */
    @Transactional
    public void end(UUID id) {
        jdbc.sql("update accountant_link set ended_at = ? where id = ? and ended_at is null")
                .params(clock.instant().atOffset(ZoneOffset.UTC), id)
                .update();
    }

    /** The link that a secret part opens today. */
    @Transactional(readOnly = true)
    public Optional<Link> opened(String secret) {
        return open("where token_hash = ?", Secrets.trace(secret));
    }

    /** Whether a link still opens; notes that it was used. */
    @Transactional
    public boolean use(UUID id) {
        Optional<Link> link = open("where id = ?", id);
        link.filter(this::isToBeNoted)
                .ifPresent(used -> jdbc.sql("update accountant_link set last_used_at = ? where id = ?")
                        .params(clock.instant().atOffset(ZoneOffset.UTC), id)
                        .update());
        return link.isPresent();
    }

    private boolean isToBeNoted(Link link) {
        Instant last = link.lastUsedAt();
        return last == null || last.plus(NOTED_EVERY).isBefore(clock.instant());
    }

    private Optional<Link> open(String which, Object key) {
        return jdbc.sql(LINK + which).param(key).query(Link.class).optional().filter(link -> link.isOpen(shop.today()));
    }
}
