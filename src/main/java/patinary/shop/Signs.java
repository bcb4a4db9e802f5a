package patinary.shop;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.web.firewall.HttpFirewall;
import org.springframework.security.web.firewall.StrictHttpFirewall;

/** Of which signs an answer may consist, whoever asks for it: a page, a search, the sign-in. */
@Configuration(proxyBeanMethods = false)
class Signs {

    /**
     * NUL stops a request at the first door: no key writes it, one of the databases cannot even be asked for it, and an archive
     * with it is not taken back in. Names of fields with such signs are refused by the firewall from the start.
     */
    @Bean
    HttpFirewall firstDoor() {
        StrictHttpFirewall door = new StrictHttpFirewall();
        door.setAllowedParameterValues(value -> value == null || value.indexOf('\0') < 0);
        return door;
    }
}
