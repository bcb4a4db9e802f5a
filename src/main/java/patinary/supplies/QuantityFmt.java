package patinary.supplies;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import patinary.measure.Dimension;
import patinary.measure.MeasureWords;
import patinary.measure.Unit;
import patinary.shop.CurrentShop;
import patinary.web.Fmt;

/** Words for quantities of supplies, in templates: {@code ${@qty.say(row.bench, row.dimension)}}. */
@Component("qty")
public class QuantityFmt {

    private static final int UNIT_COST_SCALE = 4;

    private final Fmt fmt;
    private final MessageSource messages;
    private final CurrentShop shop;

    QuantityFmt(Fmt fmt, MessageSource messages, CurrentShop shop) {
        this.fmt = fmt;
        this.messages = messages;
        this.shop = shop;
    }

    /** A quantity given in the base unit, in the unit that reads best. */
    public String say(@Nullable BigDecimal base, Dimension dimension) {
        if (base == null) {
            return fmt.number(null);
        }
        QuantityWords.Said said = QuantityWords.say(base, dimension);
        return said.unit() == Unit.EACH
                ? fmt.number(said.number())
                : fmt.quantity(
                        said.number(), message("supplies.unit." + said.unit().code()));
    }

    /** A measure or a quantity as it was typed; the words that are the program's own in the language of the page. */
    public String typed(String typed) {
        return MeasureWords.shown(typed, LocaleContextHolder.getLocale());
    }

    /** The same volume in the measures of a kitchen, to the quarter, for the bench; nothing is reckoned with it. */
    public String kitchen(BigDecimal millilitres) {
        boolean cups = millilitres.compareTo(Unit.CUP.factor().divide(BigDecimal.valueOf(4))) >= 0;
        BigDecimal quarters = millilitres
                .multiply(BigDecimal.valueOf(4))
                .divide((cups ? Unit.CUP : Unit.TABLESPOON).factor(), 0, RoundingMode.HALF_UP);
        BigDecimal number = quarters.divide(BigDecimal.valueOf(4)).stripTrailingZeros();
        return message(cups ? "supplies.kitchen.cups" : "supplies.kitchen.spoons", fmt.number(number));
    }

    /** How many packs that is, to two decimals; null where there is no pack to count in. */
    public @Nullable String packs(BigDecimal base, @Nullable String pack, @Nullable BigDecimal content) {
        if (pack == null || content == null || content.signum() == 0) {
            return null;
        }
        return message("supplies.in-packs", fmt.number(base.divide(content, 2, RoundingMode.HALF_UP)), pack);
    }

    /** What one base unit cost: a rate for reading, to four decimals, with which nothing is reckoned. */
    public String unitCost(long costMinor, BigDecimal base, Dimension dimension) {
        if (base.signum() <= 0) {
            return fmt.number(null);
        }
        BigDecimal each = BigDecimal.valueOf(costMinor, shop.currency().digits())
                .divide(base, UNIT_COST_SCALE, RoundingMode.HALF_UP);
        return message(
                "supplies.unit-cost",
                fmt.number(each),
                shop.currency().code(),
                message("supplies.per." + Unit.base(dimension).code()));
    }

    private String message(String key, Object... arguments) {
        return messages.getMessage(key, arguments, LocaleContextHolder.getLocale());
    }
}
