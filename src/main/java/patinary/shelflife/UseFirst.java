package patinary.shelflife;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import patinary.shop.CurrentShop;
import patinary.supplies.SupplyHint;
import patinary.web.Fmt;

/** Hints for whoever reaches for a supply: the oldest first, and what must not wait any longer. */
@Component
public class UseFirst implements SupplyHint {

    private final Lots lots;
    private final CurrentShop shop;
    private final Fmt fmt;
    private final MessageSource messages;

    UseFirst(Lots lots, CurrentShop shop, Fmt fmt, MessageSource messages) {
        this.lots = lots;
        this.shop = shop;
        this.fmt = fmt;
        this.messages = messages;
    }

    /** One sentence for each supply of which something is to be used first, by supply. */
    public Map<UUID, String> all() {
        Map<UUID, List<Lot>> bySupply = lots.left().stream()
                .collect(Collectors.groupingBy(Lot::supplyId, LinkedHashMap::new, Collectors.toList()));
        Map<UUID, String> hints = new LinkedHashMap<>();
        bySupply.forEach((supply, left) -> {
            List<String> said = said(left);
            if (!said.isEmpty()) {
                hints.put(supply, left.get(0).name() + ": " + String.join(" ", said));
            }
        });
        return hints;
    }

    @Override
    public List<String> about(UUID supply) {
        return said(lots.of(supply).stream().filter(Lot::isLeft).toList());
    }

    private List<String> said(List<Lot> left) {
        LocalDate today = shop.today();
        List<String> said = new ArrayList<>();
        if (left.size() > 1) {
            said.add(message("shelflife.oldest-first", fmt.date(left.get(0).cameOn()), left.size()));
        }
        for (Lot lot : left) {
            Lot.Standing standing = lot.standing(today);
            if (standing == Lot.Standing.PAST || standing == Lot.Standing.SOON) {
                said.add(message(
                        standing == Lot.Standing.PAST ? "shelflife.is-past" : "shelflife.is-soon",
                        fmt.date(lot.best().orElseThrow())));
            }
        }
        return said;
    }

    private String message(String key, Object... arguments) {
        return messages.getMessage(key, arguments, LocaleContextHolder.getLocale());
    }
}
