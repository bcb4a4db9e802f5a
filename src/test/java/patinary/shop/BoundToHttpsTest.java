package patinary.shop;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.mock.web.MockHttpServletRequest;

class BoundToHttpsTest {

    @ParameterizedTest
    @CsvSource({
        "shop.example, true, true",
        "shop.example, false, false",
        "workroom.local, true, false",
        "192.0.2.10, true, false",
        "localhost, true, false"
    })
    void onlyPublicNamesOverHttps(String host, boolean secure, boolean bound) {
        MockHttpServletRequest request = new MockHttpServletRequest();
        request.setServerName(host);
        request.setSecure(secure);

        assertThat(Doors.mayBeBoundToHttps(request)).isEqualTo(bound);
    }
}
