package patinary.asking;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.selling.FeeRule;

/**
 * What is due for offers and months by the dated rules: docs/handbook/what-to-ask.md. The rule of the day an offer was put
 * up decides, and that of the first of a month for the month, so a later rule changes nothing that fell due before.
 */
final class ChargesDue {

    /** An offer on a channel. */
    record Listed(UUID offerId, String title, LocalDate listedOn, UUID channelId) {}

    private ChargesDue() {}

    /** @param listed offers on this channel that are not settled */
    static List<Charge> ofOffers(ChannelRules.Known channel, List<Listed> listed) {
        List<Charge> due = new ArrayList<>();
        for (Listed offer : listed) {
            FeeRule rule = channel.on(offer.listedOn());
            Amount amount = rule == null ? null : rule.perOffer();
            if (offer.channelId().equals(channel.id()) && isOwed(amount)) {
                due.add(new Charge(
                        channel.id(),
                        channel.name(),
                        channel.moneyPlaceId(),
                        offer.offerId(),
                        offer.title(),
                        null,
                        offer.listedOn(),
                        amount));
            }
        }
        return due;
    }

    /**
     * Whole months that have begun.
     *
     * @param from the day the books begin; a month that began before is not theirs
     * @param settled the firsts of months that are settled
     */
    static List<Charge> ofMonths(ChannelRules.Known channel, LocalDate from, LocalDate today, Set<LocalDate> settled) {
        LocalDate first =
                from.getDayOfMonth() == 1 ? from : from.withDayOfMonth(1).plusMonths(1);
        List<Charge> due = new ArrayList<>();
        for (LocalDate month = first; !month.isAfter(today); month = month.plusMonths(1)) {
            FeeRule rule = channel.on(month);
            Amount amount = rule == null ? null : rule.perMonth();
            if (!settled.contains(month) && isOwed(amount)) {
                due.add(new Charge(
                        channel.id(), channel.name(), channel.moneyPlaceId(), null, "", month, month, amount));
            }
        }
        return due;
    }

    private static boolean isOwed(@Nullable Amount amount) {
        return amount != null && amount.isPositive();
    }
}
