package patinary.selling;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.money.Denominations;
import patinary.shop.CurrentShop;
import patinary.web.Choice;
import patinary.web.Ids;

/** Puts on the stall's page what it shows. */
@Component
class StallPage {

    private static final int MOST = 300;

    private final StallGoods goods;
    private final StallDay day;
    private final ChannelBook channels;
    private final MoneyChoices money;
    private final CurrentShop shop;
    private final Denominations denominations = Denominations.load();

    StallPage(StallGoods goods, StallDay day, ChannelBook channels, MoneyChoices money, CurrentShop shop) {
        this.goods = goods;
        this.day = day;
        this.channels = channels;
        this.money = money;
        this.shop = shop;
    }

    String shell(Model model) {
        model.addAttribute("form", new StallForm());
        model.addAttribute("wares", List.of());
        model.addAttribute("channels", List.of());
        model.addAttribute("places", List.of());
        model.addAttribute("passing", "");
        return common(model, Optional.empty(), "");
    }

    /** The channels, to be read once for a page. */
    List<ChannelFacts> channels() {
        return channels.all();
    }

    String full(Model model, StallForm form, Optional<Ware> chosen, String words, List<ChannelFacts> known) {
        model.addAttribute("form", form);
        model.addAttribute(
                "wares",
                goods.all().stream()
                        .filter(ware -> ware.matches(words))
                        .limit(MOST)
                        .toList());
        model.addAttribute(
                "channels",
                known.stream()
                        .map(channel -> Choice.named(channel.id().toString(), channel.name()))
                        .toList());
        model.addAttribute("places", money.choices());
        model.addAttribute(
                "passing",
                known.stream()
                        .filter(ChannelFacts::passesTax)
                        .map(channel -> channel.id().toString())
                        .collect(Collectors.joining(" ")));
        model.addAttribute("today", day.today());
        return common(model, chosen, words);
    }

    /** The one thing that the words find, or nothing. */
    Optional<Ware> only(String words) {
        List<Ware> found = words.isBlank()
                ? List.of()
                : goods.all().stream().filter(ware -> ware.matches(words)).toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    /** What a refused form was about. */
    Optional<Ware> ofForm(StallForm form) {
        return Ids.read(form.offer)
                .flatMap(goods::ofOffer)
                .filter(ware -> ware.code().equalsIgnoreCase(form.codes.strip()))
                .or(() -> PieceFinder.codes(form.codes).stream().findFirst().flatMap(goods::withCode));
    }

    private String common(Model model, Optional<Ware> chosen, String words) {
        model.addAttribute("chosen", chosen.orElse(null));
        model.addAttribute("q", words);
        model.addAttribute("digits", shop.currency().digits());
        model.addAttribute(
                "notes",
                denominations.on(shop.today(), shop.currency()).stream()
                        .filter(one -> one.kind() == Denominations.Kind.NOTE)
                        .map(one -> String.valueOf(one.value().minor()))
                        .collect(Collectors.joining(" ")));
        return "selling/stall";
    }
}
