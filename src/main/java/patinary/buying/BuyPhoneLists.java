package patinary.buying;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import patinary.phone.PhoneList;

/** The lists of the page for buying, for a phone without reception: names and percentages, nothing that was spent. */
@Configuration(proxyBeanMethods = false)
class BuyPhoneLists {

    @Bean
    PhoneList kindsOnPhone(BuyLists lists) {
        return PhoneList.of("kinds", lists::kinds);
    }

    @Bean
    PhoneList stylesOnPhone(BuyLists lists) {
        return PhoneList.of("styles", lists::styles);
    }

    @Bean
    PhoneList sourcesOnPhone(BuyLists lists) {
        return PhoneList.of("sources", lists::sources);
    }

    @Bean
    PhoneList percentsOnPhone(BuyLists lists) {
        return PhoneList.of("percents", lists::percents);
    }

    @Bean
    PhoneList paidOnPhone(BuyLists lists) {
        return PhoneList.of("paid", lists::paid);
    }

    @Bean
    PhoneList moneyOnPhone(BuyLists lists) {
        return PhoneList.of("money", lists::money);
    }
}
