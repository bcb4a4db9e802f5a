package patinary.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HostTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "localhost",
                "LOCALHOST",
                "shop.localhost",
                "127.0.0.1",
                "127.1.2.3",
                "::1",
                "[::1]",
                "[0:0:0:0:0:0:0:1]"
            })
    void knowsTheMachineItself(String name) {
        assertThat(Host.isThisMachine(name)).isTrue();
        assertThat(Host.isLocal(name)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"workroom.local", "workroom", "192.0.2.10", "[2001:db8::10]", "shop.home.arpa", "shop.lan"})
    void knowsTheHousesNetwork(String name) {
        assertThat(Host.isThisMachine(name)).isFalse();
        assertThat(Host.isLocal(name)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"shop.example", "localhost.example", "local.example", "127.0.0.1.example", "notlocalhost"})
    void knowsWhatIsElsewhere(String name) {
        assertThat(Host.isThisMachine(name)).isFalse();
        if (name.contains(".")) {
            assertThat(Host.isLocal(name)).isFalse();
        }
    }
}
