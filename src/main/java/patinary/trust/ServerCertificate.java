package patinary.trust;

import java.io.IOException;
import java.net.InetAddress;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;

/** The certificate that the server shows: how it is made, and when it is time for another. */
final class ServerCertificate {

    /**
     * One day less than the 398 days that browsers take at most from a public authority (browser makers' rule of September
     * 2020, from memory; for an authority of one's own 825 days are the limit of one maker). We keep the shorter one.
     */
    static final Duration LIFE = Duration.ofDays(397);

    /** So that a phone whose clock is somewhat behind takes a new certificate. */
    private static final Duration BACK = Duration.ofDays(1);

    private static final Duration RENEW = Duration.ofDays(30);
    private static final X500Name NAME = new X500Name("CN=Patinary - this shop's server");

    private ServerCertificate() {}

    static Credential make(Credential authority, Names names, Instant now)
            throws GeneralSecurityException, IOException {
        KeyPair keys = Signing.newKeys();
        X500Name issuer = X500Name.getInstance(
                authority.certificate().getSubjectX500Principal().getEncoded());
        Instant end = now.minus(BACK).plus(LIFE);
        return Signing.sign(keys, NAME, authority.key(), issuer, now.minus(BACK), end, builder -> {
            builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
            builder.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature));
            builder.addExtension(
                    Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
            builder.addExtension(Extension.subjectAlternativeName, false, alternatives(names));
            builder.addExtension(Extension.subjectKeyIdentifier, false, Signing.identifier(keys.getPublic()));
            builder.addExtension(
                    Extension.authorityKeyIdentifier,
                    false,
                    Signing.authority(authority.certificate().getPublicKey()));
        });
    }

    /** Whether it is for exactly these names and has more than thirty days to go. */
    static boolean isGood(X509Certificate certificate, Names names, Instant now) {
        Names its = Names.of(certificate);
        return new HashSet<>(its.hosts()).equals(new HashSet<>(names.hosts()))
                && new HashSet<>(its.addresses()).equals(new HashSet<>(names.addresses()))
                && certificate.getNotAfter().toInstant().isAfter(now.plus(RENEW));
    }

    private static GeneralNames alternatives(Names names) {
        List<GeneralName> all = new ArrayList<>();
        names.hosts().forEach(host -> all.add(new GeneralName(GeneralName.dNSName, host)));
        for (InetAddress address : names.addresses()) {
            all.add(new GeneralName(GeneralName.iPAddress, address.getHostAddress()));
        }
        return new GeneralNames(all.toArray(GeneralName[]::new));
    }
}
