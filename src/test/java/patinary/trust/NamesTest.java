package patinary.trust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NamesTest {

    @Test
    void tellsHostsFromAddresses() {
        Names names = Names.parse(" Workroom.LOCAL ,192.0.2.10,workroom.local, 2001:db8::10,bücher.example");

        assertThat(names.written())
                .containsExactly("workroom.local", "xn--bcher-kva.example", "192.0.2.10", "[2001:db8:0:0:0:0:0:10]");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " , ",
                "work room",
                "*.local",
                "https://workroom.local",
                "workroom.local:8443",
                "-x.local",
                "a..b",
                "300.1.1.1",
                "1::2::3",
                "under_score.local"
            })
    void refusesWhatIsNoName(String text) {
        assertThatThrownBy(() -> Names.parse(text)).isInstanceOf(IllegalArgumentException.class);
    }
}
