package patinary.ledger;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import patinary.money.Percent;

/** Keeps percentages as the number before the percent sign. */
@Converter(autoApply = true)
class PercentConverter implements AttributeConverter<Percent, BigDecimal> {

    @Override
    public @Nullable BigDecimal convertToDatabaseColumn(@Nullable Percent percent) {
        return percent == null ? null : percent.value();
    }

    @Override
    public @Nullable Percent convertToEntityAttribute(@Nullable BigDecimal value) {
        return value == null ? null : new Percent(value);
    }
}
