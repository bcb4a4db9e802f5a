package patinary.selling;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import patinary.phone.PhoneLists;

/** What a phone keeps for selling where there is no reception: the goods, the channels, the money places. */
@Component
class StallLists implements PhoneLists {

    /** Something to sell; the price in minor units. */
    record Goods(
            @Nullable UUID offer,
            String codes,
            String title,
            @Nullable Long price,
            List<UUID> pieces) {}

    /** A choice of a form; {@code usual} marks what is chosen where the phone remembers nothing. */
    record Option(String value, String text, boolean usual, boolean passes) {}

    private final StallGoods goods;
    private final ChannelBook channels;
    private final MoneyChoices money;
    private final StallDesk desk;

    StallLists(StallGoods goods, ChannelBook channels, MoneyChoices money, StallDesk desk) {
        this.goods = goods;
        this.channels = channels;
        this.money = money;
        this.desk = desk;
    }

    @Override
    public Map<String, ?> all() {
        List<ChannelFacts> known = channels.all();
        StallForm usual = desk.blank(known);
        return Map.of(
                "offers", offers(), "channels", channels(known, usual.channel), "cashplaces", places(usual.place));
    }

    private List<Goods> offers() {
        return goods.all().stream()
                .map(ware -> new Goods(ware.offer(), ware.code(), ware.title(), ware.priceMinor(), ware.pieces()))
                .toList();
    }

    private static List<Option> channels(List<ChannelFacts> known, String usual) {
        return known.stream()
                .map(channel -> new Option(
                        channel.id().toString(),
                        channel.name(),
                        usual.equals(channel.id().toString()),
                        channel.passesTax()))
                .toList();
    }

    private List<Option> places(String usual) {
        return money.choices().stream()
                .map(place -> new Option(place.value(), place.text(), usual.equals(place.value()), false))
                .toList();
    }
}
