package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.web.multipart.MultipartException;
import org.springframework.web.multipart.support.MissingServletRequestPartException;

class FormStreamTest {

    private static final String TOKEN = "--x\r\nContent-Disposition: form-data; name=\"_csrf\"\r\n\r\nsesame\r\n";
    private static final String FILE =
            "--x\r\nContent-Disposition: form-data; name=\"archive\"; filename=\"a.zip\"\r\n\r\nbytes";
    private static final String END = "\r\n--x--\r\n";

    @Test
    void tellsTheFieldsBeforeTheFileAndThenTheFile() throws Exception {
        FormStream form = form(TOKEN + FILE + END);

        assertThat(form.fields()).containsExactly(java.util.Map.entry("_csrf", "sesame"));
        assertThat(form.file("archive")).hasContent("bytes");
    }

    @Test
    void readsNothingOfTheFileForTheSakeOfTheFields() throws Exception {
        MockHttpServletRequest request = request(TOKEN + FILE + "more".repeat(100_000) + END);

        assertThat(new FormStream(request).fields()).containsKey("_csrf");
        assertThat(request.getInputStream().available()).isGreaterThan(390_000);
    }

    @Test
    void aFieldBehindTheFileIsNone() {
        assertThat(form(FILE + "\r\n" + TOKEN + "--x--\r\n").fields()).isEmpty();
    }

    @Test
    void aFormWithoutThatFileIsToldSo() {
        assertThatThrownBy(() -> form(TOKEN + "--x--\r\n").file("archive"))
                .isInstanceOf(MissingServletRequestPartException.class);
        assertThatThrownBy(() -> form(TOKEN + FILE + END).file("photo"))
                .isInstanceOf(MissingServletRequestPartException.class);
    }

    @Test
    void whatBreaksOffIsSaidOnce() {
        FormStream form = form("--x\r\nContent-Disposition: form-data; name=\"_csrf\"\r\n\r\nses");

        assertThatThrownBy(form::fields).isInstanceOf(InvalidParameterException.class);
        assertThat(form.fields()).isEmpty();
        assertThatThrownBy(() -> form("--x\r\nnone").file("archive")).isInstanceOf(MultipartException.class);
    }

    @ParameterizedTest
    @ValueSource(ints = {4097, 1_000_000})
    void aLongFieldIsRefused(int letters) {
        FormStream form = form(TOKEN.replace("sesame", "s".repeat(letters)) + FILE + END);

        assertThatThrownBy(form::fields).isInstanceOf(InvalidParameterException.class);
    }

    @Test
    void manyFieldsAreRefused() {
        StringBuilder many = new StringBuilder();
        for (int i = 0; i < 9; i++) {
            many.append(TOKEN.replace("_csrf", "f" + i));
        }

        assertThatThrownBy(form(many + FILE + END)::fields).isInstanceOf(InvalidParameterException.class);
    }

    private static FormStream form(String body) {
        return new FormStream(request(body));
    }

    private static MockHttpServletRequest request(String body) {
        MockHttpServletRequest request = new MockHttpServletRequest("POST", ArchiveDoor.PATH);
        request.setContentType("multipart/form-data; boundary=x");
        request.setContent(body.getBytes(StandardCharsets.UTF_8));
        return request;
    }
}
