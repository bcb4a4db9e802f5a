package patinary.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The list of an archive's files with the SHA-256 of each (FIPS 180-4), so that a damaged or cut file is noticed. */
final class Manifest {

    static final String FILE = "manifest.csv";
    static final String NAME = "name";
    static final String VALUE = "value";
    static final String FORMAT = "format";
    static final String CALCULATION = "calculation";

    /** Stands instead of a hash where the shop had lost the file when the archive was written. */
    static final String MISSING = "missing";

    private Manifest() {}

    static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java has SHA-256", impossible);
        }
    }

    static String text(MessageDigest digest) {
        return HexFormat.of().formatHex(digest.digest());
    }

    static String hash(InputStream file) throws IOException {
        MessageDigest digest = digest();
        try (DigestInputStream stream = new DigestInputStream(file, digest)) {
            stream.transferTo(OutputStream.nullOutputStream());
        }
        return text(digest);
    }
}
