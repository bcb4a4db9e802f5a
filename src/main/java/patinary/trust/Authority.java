package patinary.trust;

import java.io.IOException;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.cert.CertPathValidator;
import java.security.cert.CertPathValidatorException;
import java.security.cert.CertificateFactory;
import java.security.cert.PKIXParameters;
import java.security.cert.TrustAnchor;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.List;
import java.util.Set;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.KeyUsage;

/**
 * The shop's own authority: vouches for the shop's server on the names it was made for, and for nothing else, because the
 * names stand in it as a constraint.
 */
final class Authority {

    private static final int YEARS = 10;
    private static final X500Name NAME = new X500Name("CN=Patinary - this shop's own authority");

    private final Credential credential;

    Authority(Credential credential) {
        this.credential = credential;
    }

    /** Makes an authority for these names and what stands under them, good for ten years. */
    static Authority make(Names names, Instant now) throws GeneralSecurityException, IOException {
        KeyPair keys = Signing.newKeys();
        Instant end = now.atOffset(ZoneOffset.UTC).plusYears(YEARS).toInstant();
        // Two authorities of one shop, after a change of names, must be told apart in a phone's list.
        X500Name subject =
                new X500Name(NAME + ", OU=made " + now.atOffset(ZoneOffset.UTC).toLocalDate());
        Credential made = Signing.sign(keys, subject, keys.getPrivate(), subject, now, end, builder -> {
            builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(0));
            builder.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign | KeyUsage.cRLSign));
            builder.addExtension(Extension.nameConstraints, true, Constraints.only(names));
            builder.addExtension(Extension.subjectKeyIdentifier, false, Signing.identifier(keys.getPublic()));
        });
        return new Authority(made);
    }

    /** A certificate for the server on these names. Whether the authority may vouch for them is asked separately. */
    Credential issue(Names names, Instant now) throws GeneralSecurityException, IOException {
        return ServerCertificate.make(credential, names, now);
    }

    /** Whether a client that trusts this authority takes the certificate for a server now, its names included. */
    boolean vouchesFor(X509Certificate server, Instant now) {
        try {
            CertificateFactory factory = CertificateFactory.getInstance("X.509");
            PKIXParameters rules = new PKIXParameters(Set.of(new TrustAnchor(certificate(), null)));
            rules.setRevocationEnabled(false);
            rules.setDate(Date.from(now));
            // Java looks for constraints in the path, not in what is trusted: so the authority stands in both.
            CertPathValidator.getInstance("PKIX")
                    .validate(factory.generateCertPath(List.of(server, certificate())), rules);
            return true;
        } catch (CertPathValidatorException refused) {
            return false;
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    boolean lasts(Duration span, Instant now) {
        return certificate().getNotAfter().toInstant().isAfter(now.plus(span));
    }

    X509Certificate certificate() {
        return credential.certificate();
    }

    Credential credential() {
        return credential;
    }
}
