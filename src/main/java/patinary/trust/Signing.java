package patinary.trust;

import java.io.IOException;
import java.math.BigInteger;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.SecureRandom;
import java.security.spec.ECGenParameterSpec;
import java.time.Instant;
import java.util.Date;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x509.AuthorityKeyIdentifier;
import org.bouncycastle.asn1.x509.SubjectKeyIdentifier;
import org.bouncycastle.cert.X509v3CertificateBuilder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/** New keys, and certificates under them: elliptic curve P-256, signed with SHA-256; taken by every browser in use. */
final class Signing {

    private static final String CURVE = "secp256r1";
    private static final String ALGORITHM = "SHA256withECDSA";
    private static final int SERIAL_BITS = 127;

    private static final SecureRandom RANDOM = new SecureRandom();

    private Signing() {}

    /** Says what stands in a certificate. */
    interface Extensions {
        void addTo(X509v3CertificateBuilder builder) throws IOException, GeneralSecurityException;
    }

    static KeyPair newKeys() throws GeneralSecurityException {
        KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
        generator.initialize(new ECGenParameterSpec(CURVE), RANDOM);
        return generator.generateKeyPair();
    }

    static Credential sign(
            KeyPair keys,
            X500Name subject,
            PrivateKey issuerKey,
            X500Name issuer,
            Instant from,
            Instant to,
            Extensions extensions)
            throws GeneralSecurityException, IOException {
        X509v3CertificateBuilder builder = new JcaX509v3CertificateBuilder(
                issuer,
                new BigInteger(SERIAL_BITS, RANDOM).add(BigInteger.ONE),
                Date.from(from),
                Date.from(to),
                subject,
                keys.getPublic());
        extensions.addTo(builder);
        try {
            return new Credential(
                    keys.getPrivate(),
                    new JcaX509CertificateConverter()
                            .getCertificate(builder.build(new JcaContentSignerBuilder(ALGORITHM).build(issuerKey))));
        } catch (OperatorCreationException impossible) {
            throw new GeneralSecurityException(impossible);
        }
    }

    static SubjectKeyIdentifier identifier(PublicKey key) throws GeneralSecurityException {
        return new JcaX509ExtensionUtils().createSubjectKeyIdentifier(key);
    }

    static AuthorityKeyIdentifier authority(PublicKey key) throws GeneralSecurityException {
        return new JcaX509ExtensionUtils().createAuthorityKeyIdentifier(key);
    }
}
