package patinary.shop;

import java.text.Normalizer;
import org.jspecify.annotations.Nullable;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;

/**
 * Keeps passwords as Argon2id with 19 MiB and two passes, the least that OWASP's ASVS 5.0 appendix names. The same
 * letters typed on another keyboard may be other code points, so text is brought to NFKC first (NIST SP 800-63B).
 */
final class KeptPasswords implements PasswordEncoder {

    private static final int SALT = 16;
    private static final int HASH = 32;
    private static final int LANES = 1;
    private static final int KIBIBYTES = 19 * 1024;
    private static final int PASSES = 2;

    private final PasswordEncoder argon = new Argon2PasswordEncoder(SALT, HASH, LANES, KIBIBYTES, PASSES);

    @Override
    public @Nullable String encode(@Nullable CharSequence typed) {
        return argon.encode(normal(typed));
    }

    @Override
    public boolean matches(@Nullable CharSequence typed, @Nullable String kept) {
        return argon.matches(normal(typed), kept);
    }

    private static @Nullable String normal(@Nullable CharSequence typed) {
        return typed == null ? null : Normalizer.normalize(typed, Normalizer.Form.NFKC);
    }
}
