package patinary.trust;

import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.cert.X509Certificate;
import java.util.HexFormat;

/** The SHA-256 fingerprint of a certificate as phones and laptops show it: 32 pairs. */
final class Fingerprint {

    private static final HexFormat PAIRS = HexFormat.ofDelimiter(" ").withUpperCase();

    private Fingerprint() {}

    static String of(X509Certificate certificate) {
        try {
            return PAIRS.formatHex(MessageDigest.getInstance("SHA-256").digest(certificate.getEncoded()));
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
