package patinary;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.core.io.Resource;

class ViewsTogetherTest {

    @ParameterizedTest
    @MethodSource("scripts")
    void everyScriptOfAViewIsMadeAnewWithTheOthers(Resource script) throws Exception {
        assertThat(script.getContentAsString(UTF_8)).contains("-- Made anew with all views: ${views}\n");
    }

    static Resource[] scripts() {
        return ViewsTogether.scripts();
    }
}
