package patinary.selling;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import patinary.phone.PhoneList;

/** What a phone keeps for selling where there is no reception: the goods, the channels, the money places. */
@Configuration
class StallLists {

    /** Something to sell; the price in minor units. */
    record Goods(
            @Nullable UUID offer,
            String codes,
            String title,
            @Nullable Long price,
            List<UUID> pieces) {}

    /** A choice of a form; {@code usual} marks what is chosen where the phone remembers nothing. */
    record Option(String value, String text, boolean usual, boolean passes) {}

    @Bean
    PhoneList stallOffers(StallGoods goods) {
        return PhoneList.of(
                "offers",
                () -> goods.all().stream()
                        .map(ware ->
                                new Goods(ware.offer(), ware.code(), ware.title(), ware.priceMinor(), ware.pieces()))
                        .toList());
    }

    @Bean
    PhoneList stallChannels(ChannelBook channels, StallDesk desk) {
        return PhoneList.of("channels", () -> {
            String usual = desk.blank().channel;
            return channels.all().stream()
                    .map(channel -> new Option(
                            channel.id().toString(),
                            channel.name(),
                            usual.equals(channel.id().toString()),
                            channel.passesTax()))
                    .toList();
        });
    }

    @Bean
    PhoneList stallPlaces(MoneyChoices money, StallDesk desk) {
        return PhoneList.of("cashplaces", () -> {
            String usual = desk.blank().place;
            return money.choices().stream()
                    .map(place -> new Option(place.value(), place.text(), usual.equals(place.value()), false))
                    .toList();
        });
    }
}
