package patinary.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.security.web.firewall.RequestRejectedException;

class ScriptAnswersTest {

    @Test
    void whoTakesNothingButJsonIsAScript() {
        MockHttpServletRequest request = new MockHttpServletRequest();
        assertThat(ScriptAnswers.wanted(request)).isFalse();
        request.addHeader("Accept", "application/json");
        assertThat(ScriptAnswers.wanted(request)).isTrue();
    }

    /** Asked while a page of an error is drawn: a header that the firewall refuses must not lose that page. */
    @Test
    void aHeaderThatIsRefusedIsNoScripts() {
        MockHttpServletRequest request = new MockHttpServletRequest() {

            @Override
            public String getHeader(String name) {
                throw new RequestRejectedException("not allowed");
            }
        };
        assertThat(ScriptAnswers.wanted(request)).isFalse();
    }
}
