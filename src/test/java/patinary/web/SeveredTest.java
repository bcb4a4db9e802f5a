package patinary.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.EOFException;
import java.io.IOException;
import org.apache.catalina.connector.ClientAbortException;
import org.junit.jupiter.api.Test;
import org.springframework.web.context.request.async.AsyncRequestNotUsableException;

class SeveredTest {

    @Test
    void aConnectionThatBrokeOffIsNoFailureOfOurs() {
        EOFException end = new EOFException();
        assertThat(Severed.is(new IllegalStateException(new ClientAbortException(end))))
                .isTrue();
        assertThat(Severed.is(new AsyncRequestNotUsableException("gone", new IOException("Broken pipe"))))
                .isTrue();
        assertThat(Severed.is(new IllegalStateException("a damaged file", end))).isFalse();
    }
}
