package patinary.buying;

import java.util.function.Supplier;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import patinary.phone.PhoneList;

/** The lists of the page for buying, for a phone without reception: names and percentages, nothing that was spent. */
@Configuration(proxyBeanMethods = false)
class BuyPhoneLists {

    private record Kept(String name, Supplier<Object> from) implements PhoneList {

        @Override
        public Object rows() {
            return from.get();
        }
    }

    @Bean
    PhoneList kindsOnPhone(BuyLists lists) {
        return new Kept("kinds", lists::kinds);
    }

    @Bean
    PhoneList stylesOnPhone(BuyLists lists) {
        return new Kept("styles", lists::styles);
    }

    @Bean
    PhoneList sourcesOnPhone(BuyLists lists) {
        return new Kept("sources", lists::sources);
    }

    @Bean
    PhoneList percentsOnPhone(BuyLists lists) {
        return new Kept("percents", lists::percents);
    }

    @Bean
    PhoneList paidOnPhone(BuyLists lists) {
        return new Kept("paid", lists::paid);
    }

    @Bean
    PhoneList moneyOnPhone(BuyLists lists) {
        return new Kept("money", lists::money);
    }
}
