package patinary.trust;

import java.io.IOException;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.time.Clock;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Condition;
import org.springframework.context.annotation.ConditionContext;
import org.springframework.context.annotation.Conditional;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.event.EventListener;
import org.springframework.core.type.AnnotatedTypeMetadata;
import org.springframework.scheduling.annotation.EnableScheduling;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.util.StringUtils;

/** Opens the shop's own HTTPS where {@code patinary.https.names} says what the shop is called. */
@Configuration(proxyBeanMethods = false)
@ConditionalOnWebApplication
@Conditional(OwnHttps.Named.class)
@EnableScheduling
class OwnHttps {

    private static final Logger LOG = LoggerFactory.getLogger(OwnHttps.class);

    /** An empty setting, as a file of settings may have one, is none. */
    static class Named implements Condition {

        @Override
        public boolean matches(ConditionContext context, AnnotatedTypeMetadata metadata) {
            return StringUtils.hasText(context.getEnvironment().getProperty("patinary.https.names"));
        }
    }

    @Bean
    OwnRoad ownRoad(
            @Value("${patinary.https.names}") String names, @Value("${patinary.data:./data}") Path data, Clock clock) {
        return new OwnRoad(new KeyFolder(data.resolve("https")), Names.parse(names), clock);
    }

    @Bean
    HttpsConnector httpsConnector(OwnRoad road, @Value("${patinary.https.port:8443}") int port) {
        return new HttpsConnector(road, port);
    }

    /** Where {@code patinary.https.only} is set, the plain way from elsewhere leads to the trust page alone. */
    @Bean
    PlainDoor plainDoor(@Value("${patinary.https.only:false}") boolean only) {
        return new PlainDoor(only);
    }

    @Bean
    Upkeep upkeep(OwnRoad road, HttpsConnector connector) {
        return new Upkeep(road, connector);
    }

    /** Says on the console where the shop is, and looks twice a day whether the certificate has to be renewed. */
    static class Upkeep {

        private final OwnRoad road;
        private final HttpsConnector connector;

        Upkeep(OwnRoad road, HttpsConnector connector) {
            this.road = road;
            this.connector = connector;
        }

        @EventListener(ApplicationReadyEvent.class)
        void tell() {
            for (String name : road.names().written()) {
                LOG.info("The shop is open at https://{}:{}/", name, connector.port());
            }
            LOG.info(
                    "Fingerprint (SHA-256) of its authority, to compare before a phone trusts it: {}",
                    Fingerprint.of(road.authority().certificate()));
        }

        /** Each copy of the program for itself: it is its own way in that takes up what was renewed. */
        @Scheduled(initialDelay = 12, fixedDelay = 12, timeUnit = TimeUnit.HOURS)
        void renew() throws IOException, GeneralSecurityException {
            if (road.renew()) {
                connector.reload();
            }
        }
    }
}
