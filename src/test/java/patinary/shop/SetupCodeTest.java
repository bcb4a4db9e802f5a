package patinary.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import patinary.testing.MovedClock;

@ExtendWith(OutputCaptureExtension.class)
class SetupCodeTest {

    private final MovedClock clock = new MovedClock();

    @Test
    void isPrintedAndAcceptedInAnyWriting(CapturedOutput console) {
        SetupCode code = new SetupCode(clock, "");
        code.offer();
        String printed = printed(console);
        assertThat(code.accepts("nothing like it")).isFalse();
        assertThat(code.accepts(" " + printed.toLowerCase().replace("-", " "))).isTrue();
    }

    @Test
    void livesFifteenMinutes(CapturedOutput console) {
        SetupCode code = new SetupCode(clock, "");
        code.offer();
        String first = printed(console);
        clock.move(Duration.ofMinutes(15));
        assertThat(code.accepts(first)).isFalse();
        assertThat(code.accepts(printed(console))).isTrue();
    }

    @Test
    void isReplacedAfterManyWrongTries(CapturedOutput console) {
        SetupCode code = new SetupCode(clock, "");
        code.offer();
        String first = printed(console);
        for (int i = 0; i < 10; i++) {
            code.accepts("guess " + i);
        }
        assertThat(code.accepts(first)).isFalse();
    }

    @Test
    void mayBePresetForADemonstration(CapturedOutput console) {
        SetupCode code = new SetupCode(clock, "demo-1");
        code.offer();
        assertThat(console.getAll()).doesNotContain("Setup code");
        assertThat(code.accepts("DEMO1")).isTrue();
        assertThat(code.accepts("")).isFalse();
    }

    private static String printed(CapturedOutput console) {
        String all = console.getAll();
        String last = all.substring(all.lastIndexOf("minutes: ") + "minutes: ".length());
        return last.substring(0, 11);
    }
}
