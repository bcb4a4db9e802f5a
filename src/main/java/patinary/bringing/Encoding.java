package patinary.bringing;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** How the letters of a file are written as bytes; names as registered with IANA. */
enum Encoding {
    UTF_8(StandardCharsets.UTF_8),
    UTF_16LE(StandardCharsets.UTF_16LE),
    UTF_16BE(StandardCharsets.UTF_16BE),
    WINDOWS_1252(Charset.forName("windows-1252")),
    ISO_8859_1(StandardCharsets.ISO_8859_1);

    private static final int SAMPLE = 4000;

    private final Charset charset;

    Encoding(Charset charset) {
        this.charset = charset;
    }

    /** How the encoding shows: by a byte-order mark, by what the bytes look like, or by nothing else fitting. */
    enum Sign {
        MARK,
        LOOKS,
        FALLBACK
    }

    /** An encoding and what speaks for it. */
    record Guess(Encoding encoding, Sign sign) {}

    /**
     * The encoding of a file: its byte-order mark (Unicode standard, section 23.8), zeros at every second byte as UTF-16
     * has in western text, bytes that are well-formed UTF-8, and otherwise windows-1252, which gives every letter of ISO
     * 8859-1 too. Where ISO 8859-1 itself is meant a person has to say so.
     */
    static Guess guess(byte[] bytes) {
        if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
            return new Guess(UTF_8, Sign.MARK);
        }
        if (startsWith(bytes, 0xFF, 0xFE)) {
            return new Guess(UTF_16LE, Sign.MARK);
        }
        if (startsWith(bytes, 0xFE, 0xFF)) {
            return new Guess(UTF_16BE, Sign.MARK);
        }
        int sample = Math.min(bytes.length, SAMPLE) / 2;
        if (sample > 0 && zeros(bytes, 1) * 10 > sample * 7) {
            return new Guess(UTF_16LE, Sign.LOOKS);
        }
        if (sample > 0 && zeros(bytes, 0) * 10 > sample * 7) {
            return new Guess(UTF_16BE, Sign.LOOKS);
        }
        return isUtf8(bytes) ? new Guess(UTF_8, Sign.LOOKS) : new Guess(WINDOWS_1252, Sign.FALLBACK);
    }

    /** The text without its byte-order mark; what cannot be read becomes U+FFFD. */
    String text(byte[] bytes) {
        String text = new String(bytes, charset);
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    public String messageKey() {
        return "bringing.encoding." + name();
    }

    private static boolean isUtf8(byte[] bytes) {
        try {
            StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes));
            return true;
        } catch (CharacterCodingException malformed) {
            return false;
        }
    }

    private static int zeros(byte[] bytes, int from) {
        int zeros = 0;
        for (int i = from; i < Math.min(bytes.length, SAMPLE); i += 2) {
            zeros += bytes[i] == 0 ? 1 : 0;
        }
        return zeros;
    }

    private static boolean startsWith(byte[] bytes, int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }
}
