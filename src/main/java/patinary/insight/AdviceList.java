package patinary.insight;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import patinary.money.Amount;
import patinary.phone.PhoneList;

/** What to pay, for a phone in the aisle. */
@Component
class AdviceList implements PhoneList {

    /**
     * What to pay for one kind of piece; amounts in minor units.
     *
     * @param kind the id of the kind; null for any
     * @param style the id of the style; null for any
     * @param most null where there is no figure, or no price is worth it: the words say which
     * @param pieces how many of its own the books know; null for the whole shop, as a lost phone need not tell its size
     * @param sold how many of its own sold; null for the whole shop
     * @param few whether few of its own sold so far
     */
    record Row(
            @Nullable UUID kind,
            String kindName,
            @Nullable UUID style,
            String styleName,
            @Nullable Long most,
            @Nullable Long low,
            @Nullable Long high,
            @Nullable Long pieces,
            @Nullable Long sold,
            boolean few,
            String words) {}

    private final Outcomes outcomes;
    private final MessageSource messages;

    AdviceList(Outcomes outcomes, MessageSource messages) {
        this.outcomes = outcomes;
        this.messages = messages;
    }

    @Override
    public String name() {
        return "advice";
    }

    @Override
    public boolean tellsCosts() {
        return true;
    }

    @Override
    public List<Row> rows() {
        return outcomes.whatToPay().stream().map(this::row).toList();
    }

    private Row row(PayRow row) {
        long sold = row.pool().net().count();
        boolean whole = row.group().isWhole();
        return new Row(
                row.group().kindId(),
                row.group().kind(),
                row.group().styleId(),
                row.group().style(),
                minor(row.most()),
                minor(row.low()),
                minor(row.high()),
                whole ? null : row.pool().pieces(),
                whole ? null : sold,
                row.few(),
                messages.getMessage(
                        "insight.pay.words." + said(row), new Object[] {sold}, LocaleContextHolder.getLocale()));
    }

    /** The page counts what the whole shop sold; the phone does not. */
    private static String said(PayRow row) {
        boolean figure = row.words() != PayRow.Words.NONE && row.words() != PayRow.Words.NOT_WORTH;
        return figure && row.group().isWhole() ? "WHOLE" : row.words().name();
    }

    private static @Nullable Long minor(@Nullable Amount amount) {
        return amount == null ? null : amount.minor();
    }
}
