package patinary.trust;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The authority and the server's certificate as they are kept, made where they are missing and renewed where it is time. A
 * new certificate under the same authority goes unnoticed; a new authority has to be trusted again on every device, so it
 * is made only when the kept one cannot vouch for the names, or would end before the certificate does.
 */
final class OwnRoad {

    static final String ALIAS = "shop";

    private static final Logger LOG = LoggerFactory.getLogger(OwnRoad.class);
    private static final String AUTHORITY = "authority";
    private static final String SERVER = "server";

    private final KeyFolder folder;
    private final Names names;
    private final Clock clock;

    private Authority authority;
    private Credential server;

    /** @throws IllegalStateException where keys cannot be read, made or kept; the program must not start without them */
    OwnRoad(KeyFolder folder, Names names, Clock clock) {
        this.folder = folder;
        this.names = names;
        this.clock = clock;
        try {
            Instant now = clock.instant();
            authority = keptOrNewAuthority(now);
            server = keptOrNewServer(now);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } catch (GeneralSecurityException failed) {
            throw new IllegalStateException(failed);
        }
    }

    /** Renews what is due. @return whether the server has another certificate to show now */
    synchronized boolean renew() throws IOException, GeneralSecurityException {
        Credential before = server;
        Instant now = clock.instant();
        authority = keptOrNewAuthority(now);
        server = keptOrNewServer(now);
        return !before.certificate().equals(server.certificate());
    }

    Names names() {
        return names;
    }

    synchronized Authority authority() {
        return authority;
    }

    synchronized Credential server() {
        return server;
    }

    /** What the server shows: its certificate and the authority's. In memory only; the password guards nothing. */
    synchronized KeyStore keys(char[] password) throws GeneralSecurityException, IOException {
        KeyStore keys = KeyStore.getInstance("PKCS12");
        keys.load(null, null);
        keys.setKeyEntry(ALIAS, server.key(), password, new java.security.cert.Certificate[] {
            server.certificate(), authority.certificate()
        });
        return keys;
    }

    private Authority keptOrNewAuthority(Instant now) throws IOException, GeneralSecurityException {
        Optional<Authority> kept = folder.read(AUTHORITY).map(Authority::new);
        if (kept.isPresent() && kept.get().lasts(ServerCertificate.LIFE, now) && mayVouch(kept.get(), now)) {
            return kept.get();
        }
        Authority made = Authority.make(names, now);
        folder.write(AUTHORITY, made.credential());
        LOG.warn(
                kept.isPresent()
                        ? "A new authority was made, because the old one is not good for {} or ends soon. Trust the new one"
                                + " on every device, and take the old one away."
                        : "An authority was made for {}. Trust it once on every device: see /trust.",
                names.written());
        return made;
    }

    private boolean mayVouch(Authority kept, Instant now) throws IOException, GeneralSecurityException {
        return kept.vouchesFor(kept.issue(names, now).certificate(), now);
    }

    private Credential keptOrNewServer(Instant now) throws IOException, GeneralSecurityException {
        Optional<Credential> kept = folder.read(SERVER);
        if (kept.isPresent()
                && ServerCertificate.isGood(kept.get().certificate(), names, now)
                && authority.vouchesFor(kept.get().certificate(), now)) {
            return kept.get();
        }
        Credential made = authority.issue(names, now);
        folder.write(SERVER, made);
        LOG.info(
                "A certificate was made for {}, good until {}",
                names.written(),
                made.certificate().getNotAfter().toInstant());
        return made;
    }
}
