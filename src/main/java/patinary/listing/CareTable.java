package patinary.listing;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.io.ClassPathResource;

/** Loads the lines of care that come with the program. */
@Configuration(proxyBeanMethods = false)
class CareTable {

    @Bean
    CareLines careLines() throws IOException {
        ClassPathResource table = new ClassPathResource("db/reference/care-lines.csv");
        try (Reader reader = new InputStreamReader(table.getInputStream(), StandardCharsets.UTF_8)) {
            return CareLines.read(reader);
        }
    }
}
