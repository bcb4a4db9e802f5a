package patinary.shop;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.HexFormat;

/** Makes what nobody can guess, and the trace of it that may be kept. */
final class Secrets {

    /** Without what is easily taken for something else: no i, l, o, 0 or 1. */
    private static final String SIGNS = "abcdefghjkmnpqrstuvwxyz23456789";

    private static final SecureRandom RANDOM = new SecureRandom();

    private Secrets() {}

    /** Signs drawn at random from a set of 31, each worth 4.95 bits. */
    static String signs(int length) {
        StringBuilder signs = new StringBuilder();
        for (int i = 0; i < length; i++) {
            signs.append(SIGNS.charAt(RANDOM.nextInt(SIGNS.length())));
        }
        return signs.toString();
    }

    /** The SHA-256 of a text of at least 112 random bits; for anything shorter it is too fast. */
    static String trace(String secret) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException everyPlatformHasIt) {
            throw new IllegalStateException(everyPlatformHasIt);
        }
    }
}
