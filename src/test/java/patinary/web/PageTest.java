package patinary.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class PageTest {

    @Test
    void saysWhichRowsItShows() {
        Page<String> last = Page.of(new Window(3, 2), List.of("e"), 5);
        assertThat(last.pages()).isEqualTo(3);
        assertThat(last.first()).isEqualTo(5);
        assertThat(last.last()).isEqualTo(5);
        assertThat(last.hasNext()).isFalse();
        assertThat(last.hasPrevious()).isTrue();
    }

    @Test
    void isOnePageWhenThereIsNothing() {
        Page<String> none = Page.of(Window.of(null), List.of(), 0);
        assertThat(none.pages()).isEqualTo(1);
        assertThat(none.first()).isZero();
        assertThat(none.last()).isZero();
        assertThat(none.hasNext()).isFalse();
    }

    @Test
    void capsWhatAnAddressMayAskFor() {
        assertThat(new Window(1, 1_000_000).size()).isEqualTo(200);
        assertThat(new Window(-5, 0)).isEqualTo(new Window(1, 1));
        assertThat(Window.of(Integer.MAX_VALUE).offset()).isPositive();
    }
}
