package patinary.shop;

import java.time.Clock;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The only place where the time of day comes from. */
@Configuration(proxyBeanMethods = false)
class ShopClock {

    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }
}
