package patinary.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import org.junit.jupiter.api.Test;
import org.springframework.validation.BindingResult;
import org.springframework.validation.MapBindingResult;
import patinary.money.ShopCurrency;

class AnswersTest {

    private final BindingResult errors = new MapBindingResult(new HashMap<>(), "form");
    private final Answers answers = new Answers(errors, ShopCurrency.ofCode("USD"));

    @Test
    void aTextIsTakenWithoutTheRoomAroundIt() {
        assertThat(answers.note("name", "  Tin box ", 20)).isEqualTo("Tin box");
        assertThat(errors.hasErrors()).isFalse();
    }

    @Test
    void aTextThatIsTooLongIsRefusedBesideItsField() {
        answers.note("name", "tin box", 6);
        assertThat(errors.getFieldError("name").getCode()).isEqualTo("web.answer.too-long");
    }
}
