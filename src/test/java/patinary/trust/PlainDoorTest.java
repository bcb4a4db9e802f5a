package patinary.trust;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.web.MockFilterChain;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;

class PlainDoorTest {

    @ParameterizedTest
    @ValueSource(strings = {"/", "/sign-in", "/receipts", "/shop/archive/download", "/buy"})
    void leadsPlainRequestsToTheTrustPage(String path) throws Exception {
        MockHttpServletResponse answer = ask(new PlainDoor(true), path, "workroom.local", false);

        assertThat(answer.getStatus()).isEqualTo(303);
        assertThat(answer.getHeader("Location")).isEqualTo("/trust");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/trust", "/trust/authority.crt", "/css/patinary.css", "/actuator/health"})
    void leavesOpenWhatLeadsToTrust(String path) throws Exception {
        assertThat(ask(new PlainDoor(true), path, "workroom.local", false).getStatus())
                .isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/sign-in"})
    void isInNobodysWayOtherwise(String path) throws Exception {
        assertThat(ask(new PlainDoor(true), path, "workroom.local", true).getStatus())
                .as("encrypted")
                .isEqualTo(200);
        assertThat(ask(new PlainDoor(true), path, "localhost", false).getStatus())
                .as("at the machine itself")
                .isEqualTo(200);
        assertThat(ask(new PlainDoor(false), path, "workroom.local", false).getStatus())
                .as("not asked to close")
                .isEqualTo(200);
    }

    private static MockHttpServletResponse ask(PlainDoor door, String path, String host, boolean secure)
            throws Exception {
        MockHttpServletRequest request = new MockHttpServletRequest("GET", path);
        request.setServerName(host);
        request.setSecure(secure);
        MockHttpServletResponse answer = new MockHttpServletResponse();
        door.doFilter(request, answer, new MockFilterChain());
        return answer;
    }
}
