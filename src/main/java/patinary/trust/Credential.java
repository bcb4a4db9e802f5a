package patinary.trust;

import java.security.PrivateKey;
import java.security.cert.X509Certificate;

/** A certificate and the key that belongs to it. Prints without the key. */
record Credential(PrivateKey key, X509Certificate certificate) {

    @Override
    public String toString() {
        return "Credential of " + certificate.getSubjectX500Principal();
    }
}
