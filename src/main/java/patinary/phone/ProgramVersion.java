package patinary.phone;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HexFormat;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;

/**
 * Names the version of the pages, from what they are made of: templates, words, style, scripts, pictures. A phone keeps
 * copies of some pages and renews them when this changes.
 */
@Component
class ProgramVersion {

    private static final int LENGTH = 12;
    private static final String[] PARTS = {
        "classpath:/static/**/*.*", "classpath:/templates/**/*.html", "classpath:/messages/*.properties"
    };

    private final String text;

    ProgramVersion() {
        try {
            text = hash();
        } catch (IOException | NoSuchAlgorithmException unreadable) {
            throw new IllegalStateException("The program's own pages cannot be read", unreadable);
        }
    }

    /** Twelve hexadecimal digits. */
    String text() {
        return text;
    }

    private static String hash() throws IOException, NoSuchAlgorithmException {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        PathMatchingResourcePatternResolver finder = new PathMatchingResourcePatternResolver();
        for (String part : PARTS) {
            Resource[] files = finder.getResources(part);
            Arrays.sort(files, Comparator.comparing(ProgramVersion::address));
            for (Resource file : files) {
                digest.update(file.getContentAsByteArray());
            }
        }
        return HexFormat.of().formatHex(digest.digest()).substring(0, LENGTH);
    }

    private static String address(Resource file) {
        try {
            return file.getURL().toString();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
