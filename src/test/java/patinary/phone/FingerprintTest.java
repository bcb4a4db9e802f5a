package patinary.phone;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.mock.web.MockMultipartHttpServletRequest;

class FingerprintTest {

    @Test
    void doesNotMindTheOrderOfFieldsOrTheTokenOfTheForm() {
        MockHttpServletRequest one = request("a", "1", "b", "2");
        MockHttpServletRequest other = request("b", "2", "a", "1");
        other.addParameter("_csrf", "anything");
        assertThat(Fingerprint.of(one)).hasSize(64).isEqualTo(Fingerprint.of(other));
    }

    @Test
    void tellsFieldsValuesAndPlacesApart() {
        MockHttpServletRequest elsewhere = request("a", "1", "b", "2");
        elsewhere.setRequestURI("/elsewhere");
        assertThat(Stream.of(
                                request("a", "1", "b", "2"),
                                request("a", "1", "b", "3"),
                                request("a", "1"),
                                request("a", "1", "a", "2"),
                                request("a", "2", "a", "1"),
                                request("a", "12"),
                                request("a1", "2"),
                                elsewhere)
                        .map(Fingerprint::of))
                .doesNotHaveDuplicates();
    }

    @Test
    void readsTheBytesOfFiles() {
        assertThat(Fingerprint.of(photo(1))).isEqualTo(Fingerprint.of(photo(1))).isNotEqualTo(Fingerprint.of(photo(2)));
    }

    private static MockHttpServletRequest photo(int content) {
        MockMultipartHttpServletRequest request = new MockMultipartHttpServletRequest();
        request.addFile(new MockMultipartFile("file", new byte[] {(byte) content}));
        return request;
    }

    private static MockHttpServletRequest request(String... fields) {
        MockHttpServletRequest request = new MockHttpServletRequest("POST", "/here");
        for (int i = 0; i < fields.length; i += 2) {
            request.addParameter(fields[i], fields[i + 1]);
        }
        return request;
    }
}
