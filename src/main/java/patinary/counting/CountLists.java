package patinary.counting;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import patinary.phone.PhoneList;
import patinary.supplies.SupplyCatalog;

/** What the counting page needs on a phone without reception. */
@Configuration(proxyBeanMethods = false)
class CountLists {

    @Bean
    PhoneList countSupplies(SupplyCatalog catalog) {
        return PhoneList.of("count-supplies", () -> CountRow.of(catalog.all()));
    }
}
