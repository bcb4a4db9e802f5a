package patinary.shop;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PasswordRulesTest {

    private final PasswordRules rules = new PasswordRules();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "four gulls over wet slate",
                "öäüßéèñçøåæœłžš",
                "alllowercaseletters",
                "               x y z a b c               "
            })
    void takesAnythingLongThatIsNotObvious(String password) {
        assertThat(rules.refuse(password, "Robin", "Linden Lane Bench")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "short", "fourteen chars"})
    void asksForFifteenCharacters(String password) {
        assertThat(rules.refuse(password)).contains("shop.password.error.short");
    }

    @Test
    void countsCharactersAndNotTheirBytes() {
        assertThat(rules.refuse("😀🎨🖌🪑🧵😁🎭🧶🪡🧷😂🎪🔨🪛")).contains("shop.password.error.short");
        assertThat(rules.refuse("😀🎨🖌🪑🧵😁🎭🧶🪡🧷😂🎪🔨🪛🪚")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Password Password",
                "correct horse battery staple",
                "aaaaaaaaaaaaaaaaaaaa",
                "1234567890123456",
                "Robin Robin Robin 1",
                "Linden Lane Bench 12",
                "welcome-welcome-2025"
            })
    void refusesTheObvious(String password) {
        assertThat(rules.refuse(password, "Robin", "Linden Lane Bench")).contains("shop.password.error.obvious");
    }

    @Test
    void neverCutsALongPassword() {
        KeptPasswords kept = new KeptPasswords();
        String longOne = "x".repeat(150);
        String hash = kept.encode(longOne + "a");
        assertThat(hash).startsWith("$argon2id$");
        assertThat(kept.matches(longOne + "a", hash)).isTrue();
        assertThat(kept.matches(longOne + "b", hash)).isFalse();
    }

    @Test
    void readsTheSameLettersFromAnyKeyboard() {
        KeptPasswords kept = new KeptPasswords();
        String hash = kept.encode("caf\u00e9 by the old canal");
        assertThat(kept.matches("cafe\u0301 by the old canal", hash)).isTrue();
    }
}
