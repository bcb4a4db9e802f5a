package patinary.phone;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.TreeMap;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.multipart.MultipartHttpServletRequest;
import org.springframework.web.util.WebUtils;

/**
 * Tells whether two requests say the same: a SHA-256 over where they were sent and all their fields and files. The token
 * that guards a form is left out; it differs from sign-in to sign-in.
 */
final class Fingerprint {

    private static final String TOKEN = "_csrf";

    private final MessageDigest digest;

    private Fingerprint() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** The fingerprint as 64 hexadecimal digits. */
    static String of(HttpServletRequest request) {
        Fingerprint print = new Fingerprint();
        print.add(request.getRequestURI());
        new TreeMap<>(request.getParameterMap()).forEach((name, values) -> print.add(name, values));
        // The files may stand behind the wrappers of filters.
        MultipartHttpServletRequest parts = WebUtils.getNativeRequest(request, MultipartHttpServletRequest.class);
        if (parts != null) {
            new TreeMap<>(parts.getMultiFileMap()).forEach((name, files) -> print.add(name, files));
        }
        return print.hex();
    }

    private void add(String name, String[] values) {
        if (name.equals(TOKEN)) {
            return;
        }
        add(name);
        number(values.length);
        for (String value : values) {
            add(value);
        }
    }

    private void add(String name, List<MultipartFile> files) {
        add(name);
        number(files.size());
        files.forEach(this::add);
    }

    private void add(MultipartFile file) {
        number(file.getSize());
        try (InputStream bytes = new DigestInputStream(file.getInputStream(), digest)) {
            bytes.transferTo(OutputStream.nullOutputStream());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The length goes first, so that no two lists of texts run into one another. */
    private void add(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        number(bytes.length);
        digest.update(bytes);
    }

    private void number(long number) {
        digest.update(ByteBuffer.allocate(Long.BYTES).putLong(number).array());
    }

    private String hex() {
        return HexFormat.of().formatHex(digest.digest());
    }
}
