package patinary.bench;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.io.ClassPathResource;

/** Loads the cautions that come with the program. */
@Configuration(proxyBeanMethods = false)
class CautionTable {

    @Bean
    Cautions cautions() throws IOException {
        ClassPathResource table = new ClassPathResource("db/reference/cautions.csv");
        try (Reader reader = new InputStreamReader(table.getInputStream(), StandardCharsets.UTF_8)) {
            return Cautions.read(reader);
        }
    }
}
