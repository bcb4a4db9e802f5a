package patinary.asking;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.Amount;
import patinary.money.PriceEndings;
import patinary.selling.DaysOnOffer;
import patinary.selling.Offer;
import patinary.selling.OfferPrices;
import patinary.selling.WhatToAsk;
import patinary.shop.CurrentAims;
import patinary.shop.CurrentShop;

/** Which offers her plan would mark down today, and those she decides to. Nothing is marked down by itself. */
@Service
@Transactional
class MarkDowns {

    /** An offer, the price it asked on the page, and the new one. */
    record Chosen(UUID offer, Amount before, Amount price) {}

    private final MarkDownPlan plan;
    private final OfferReading offers;
    private final OfferPauses pauses;
    private final ChannelRules channels;
    private final OfferPrices prices;
    private final CurrentAims aims;
    private final CurrentShop shop;

    MarkDowns(
            MarkDownPlan plan,
            OfferReading offers,
            OfferPauses pauses,
            ChannelRules channels,
            OfferPrices prices,
            CurrentAims aims,
            CurrentShop shop) {
        this.plan = plan;
        this.offers = offers;
        this.pauses = pauses;
        this.channels = channels;
        this.prices = prices;
        this.aims = aims;
        this.shop = shop;
    }

    /** The longest on offer first. */
    @Transactional(readOnly = true)
    public List<Suggestion> due() {
        List<MarkDown.Step> steps = plan.steps();
        if (steps.isEmpty()) {
            return List.of();
        }
        LocalDate today = shop.today();
        Map<UUID, List<Offer.Pause>> paused = pauses.all();
        Map<OpenOffer, Long> late = new LinkedHashMap<>();
        for (OpenOffer offer : offers.open(today)) {
            long days = DaysOnOffer.count(offer.startedOn(), today, paused.getOrDefault(offer.offerId(), List.of()));
            if (days >= steps.get(0).afterDays()) {
                late.put(offer, days);
            }
        }
        return suggestions(steps, late, today);
    }

    private List<Suggestion> suggestions(List<MarkDown.Step> steps, Map<OpenOffer, Long> late, LocalDate today) {
        List<UUID> ids = late.keySet().stream().map(OpenOffer::offerId).toList();
        Map<UUID, String> codes = offers.codes(ids);
        Map<UUID, Amount> landed = offers.landed(ids);
        Map<UUID, List<UUID>> where = offers.channels(ids);
        Map<UUID, ChannelRules.Known> known =
                channels.all().stream().collect(Collectors.toMap(ChannelRules.Known::id, one -> one));
        PriceEndings endings = aims.get().priceEndings();
        List<Suggestion> due = new ArrayList<>();
        late.forEach((offer, days) -> {
            Amount floor = floor(
                    landed.getOrDefault(offer.offerId(), Amount.ZERO),
                    where.getOrDefault(offer.offerId(), List.of()).stream()
                            .map(known::get)
                            .toList(),
                    today);
            Amount first = Amount.of(offer.firstPriceMinor());
            Amount present = Amount.of(offer.priceMinor());
            MarkDown.of(steps, days, first, present, floor, endings)
                    .map(down -> new Suggestion(
                            offer.offerId(),
                            offer.title(),
                            codes.get(offer.offerId()),
                            offer.startedOn(),
                            days,
                            first,
                            present,
                            floor,
                            down))
                    .ifPresent(due::add);
        });
        return due;
    }

    /**
     * The highest of the floors of its channels, as one price holds on all of them. What was paid for putting it up is
     * gone already and does not count. Null where a channel has none.
     */
    private static @Nullable Amount floor(Amount landed, List<ChannelRules.Known> channels, LocalDate today) {
        Amount floor = landed;
        for (ChannelRules.Known channel : channels) {
            Optional<Amount> least = WhatToAsk.smallest(channel.usual().under(channel.on(today)), landed);
            if (least.isEmpty()) {
                return null;
            }
            floor = floor.max(least.get());
        }
        return floor;
    }

    /** All or none of them, from today on. */
    public void take(List<Chosen> chosen) {
        prices.ask(
                shop.today(),
                chosen.stream()
                        .map(one -> new OfferPrices.Ask(one.offer(), one.before(), one.price()))
                        .toList());
    }

    /** What asks another price since today, with the price before. */
    @Transactional(readOnly = true)
    public List<OpenOffer> takenToday() {
        return offers.changed(shop.today());
    }

    public boolean takeBack(UUID offer) {
        return prices.takeBack(offer, shop.today());
    }
}
