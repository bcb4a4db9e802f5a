package patinary.shop;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DeviceKindTest {

    /** The part that browsers put in brackets, from memory; a phone also names what its system is made from. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Mozilla/5.0 (Linux; Android 15; K) AppleWebKit/537.36|ANDROID",
                "Mozilla/5.0 (iPhone; CPU iPhone OS 18_0 like Mac OS X) AppleWebKit/605.1.15|IOS",
                "Mozilla/5.0 (iPad; CPU OS 18_0 like Mac OS X)|IOS",
                "Mozilla/5.0 (Windows NT 10.0; Win64; x64)|WINDOWS",
                "Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7)|MACOS",
                "Mozilla/5.0 (X11; Linux x86_64)|LINUX",
                "curl/8|OTHER"
            })
    void isReadFromWhatABrowserSays(String said, DeviceKind kind) {
        assertThat(DeviceKind.of(said)).isEqualTo(kind);
    }

    @Test
    void isUnknownWhereNothingIsSaid() {
        assertThat(DeviceKind.of(null)).isEqualTo(DeviceKind.OTHER);
    }
}
