package patinary;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.zip.CRC32;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.springframework.boot.flyway.autoconfigure.FlywayConfigurationCustomizer;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;

/**
 * Makes all views anew when one of them has changed: replacing a view drops the views built on it, and a repeatable
 * script runs again only when its own text differs. Every view's script carries the placeholder {@code views}, the
 * check sum of all the scripts together.
 */
@Component
class ViewsTogether implements FlywayConfigurationCustomizer {

    private static final String SCRIPTS = "classpath:db/views/R__*.sql";

    @Override
    public void customize(FluentConfiguration flyway) {
        flyway.placeholders(Map.of("views", checkSum(scripts())));
    }

    static Resource[] scripts() {
        try {
            Resource[] scripts = new PathMatchingResourcePatternResolver().getResources(SCRIPTS);
            Arrays.sort(scripts, Comparator.comparing(Resource::getFilename));
            return scripts;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String checkSum(Resource... scripts) {
        CRC32 sum = new CRC32();
        for (Resource script : scripts) {
            try (InputStream text = script.getInputStream()) {
                sum.update(text.readAllBytes());
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
        return Long.toHexString(sum.getValue());
    }
}
