package patinary.trust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.security.interfaces.ECPublicKey;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Set;
import javax.net.ssl.SSLHandshakeException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The chain is judged by the Java platform's own path validation (PKIX, RFC 5280) and by real handshakes. */
class AuthorityTest {

    private static final Instant NOW = Instant.now();
    private static final Names NAMES = Names.parse("workroom.local, bench.example, 192.0.2.10, 2001:db8::10");

    @ParameterizedTest
    @ValueSource(strings = {"workroom.local", "bench.example", "192.0.2.10", "2001:db8::10"})
    void isBelievedOnEveryNameItWasMadeFor(String host) throws Exception {
        Authority authority = Authority.make(NAMES, NOW);
        KeyStore server = keys(authority, authority.issue(NAMES, NOW));

        assertThatCode(() -> Handshake.with(server, authority.certificate(), host))
                .doesNotThrowAnyException();
    }

    @ParameterizedTest
    @ValueSource(strings = {"other.local", "workroom.local.example", "192.0.2.11", "localhost"})
    void isNotBelievedOnAnyOther(String host) throws Exception {
        Authority authority = Authority.make(NAMES, NOW);
        KeyStore server = keys(authority, authority.issue(NAMES, NOW));

        assertThatThrownBy(() -> Handshake.with(server, authority.certificate(), host))
                .isInstanceOf(SSLHandshakeException.class);
    }

    @Test
    void isNotBelievedByThoseWhoTrustAnotherAuthority() throws Exception {
        Authority authority = Authority.make(NAMES, NOW);
        X509Certificate other = Authority.make(NAMES, NOW).certificate();
        KeyStore server = keys(authority, authority.issue(NAMES, NOW));

        assertThatThrownBy(() -> Handshake.with(server, other, "workroom.local"))
                .isInstanceOf(SSLHandshakeException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"bank.example", "workroom.local,bank.example", "198.51.100.7", "2001:db8::11", "example"})
    void cannotVouchForNamesItWasNotMadeFor(String others) throws Exception {
        Authority authority = Authority.make(Names.parse("workroom.local,192.0.2.10"), NOW);
        X509Certificate stolen = authority.issue(Names.parse(others), NOW).certificate();

        assertThat(authority.vouchesFor(stolen, NOW)).isFalse();
    }

    @Test
    void aKindOfNameThatItWasNotMadeForIsClosedToo() throws Exception {
        Authority hosts = Authority.make(Names.parse("workroom.local"), NOW);
        Authority addresses = Authority.make(Names.parse("192.0.2.10"), NOW);

        assertThat(hosts.vouchesFor(
                        hosts.issue(Names.parse("198.51.100.7"), NOW).certificate(), NOW))
                .isFalse();
        assertThat(addresses.vouchesFor(
                        addresses.issue(Names.parse("bank.example"), NOW).certificate(), NOW))
                .isFalse();
        assertThat(addresses.vouchesFor(
                        addresses.issue(Names.parse("192.0.2.10"), NOW).certificate(), NOW))
                .isTrue();
    }

    @Test
    void theAuthorityIsOneForTenYears() throws Exception {
        X509Certificate certificate = Authority.make(NAMES, NOW).certificate();

        assertThat(certificate.getBasicConstraints())
                .as("may sign servers, not authorities")
                .isZero();
        assertThat(certificate.getCriticalExtensionOIDs())
                .as("basic constraints, key usage, name constraints")
                .containsExactlyInAnyOrder("2.5.29.19", "2.5.29.15", "2.5.29.30");
        assertThat(((ECPublicKey) certificate.getPublicKey())
                        .getParams()
                        .getOrder()
                        .bitLength())
                .isEqualTo(256);
        assertThat(certificate.getNotAfter().toInstant())
                .isBetween(
                        NOW.atOffset(ZoneOffset.UTC)
                                .plusYears(10)
                                .minusMinutes(1)
                                .toInstant(),
                        NOW.atOffset(ZoneOffset.UTC)
                                .plusYears(10)
                                .plusMinutes(1)
                                .toInstant());
    }

    @Test
    void theServersCertificateKeepsToTheLimitsOfBrowsers() throws Exception {
        Authority authority = Authority.make(NAMES, NOW);
        X509Certificate certificate = authority.issue(NAMES, NOW).certificate();

        Duration life = Duration.between(
                certificate.getNotBefore().toInstant(),
                certificate.getNotAfter().toInstant());
        assertThat(life).isLessThanOrEqualTo(Duration.ofDays(398)).isGreaterThan(Duration.ofDays(390));
        assertThat(certificate.getExtendedKeyUsage()).containsExactly("1.3.6.1.5.5.7.3.1");
        assertThat(certificate.getBasicConstraints()).isEqualTo(-1);
        assertThat(Set.copyOf(Names.of(certificate).written())).isEqualTo(Set.copyOf(NAMES.written()));
        assertThat(authority.vouchesFor(
                        certificate, certificate.getNotAfter().toInstant().plusSeconds(1)))
                .isFalse();
    }

    private static KeyStore keys(Authority authority, Credential server) throws Exception {
        KeyStore keys = KeyStore.getInstance("PKCS12");
        keys.load(null, null);
        Certificate[] chain = {server.certificate(), authority.certificate()};
        keys.setKeyEntry("server", server.key(), Handshake.password(), chain);
        return keys;
    }
}
