package patinary.shop;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PasskeyPlacesTest {

    private final PasskeyPlaces places = new PasskeyPlaces("Workroom.local, 192.0.2.10", "shop.example");

    /** W3C Web Authentication: an effective domain, in a secure context; an address of digits is none. */
    @ParameterizedTest
    @CsvSource({
        "http, localhost, 8080, http://localhost:8080",
        "http, localhost, 80, http://localhost",
        "https, workroom.local, 8443, https://workroom.local:8443",
        "https, SHOP.example, 443, https://shop.example",
        "http, workroom.local, 8080,",
        "https, 192.0.2.10, 8443,",
        "http, 127.0.0.1, 8080,",
        "https, evil.example, 443,",
        "https, shop.example.evil.example, 443,",
        "https, example, 443,"
    })
    void areTheNamesThatTheShopWasStartedWith(String scheme, String host, int port, String origin) {
        assertThat(places.of(scheme, host, port)
                        .map(PasskeyPlaces.Place::origin)
                        .orElse(null))
                .isEqualTo(origin);
    }
}
