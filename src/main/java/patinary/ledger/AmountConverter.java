package patinary.ledger;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/** Keeps amounts as whole minor units in the database, so that the database can add them up. */
@Converter(autoApply = true)
class AmountConverter implements AttributeConverter<Amount, Long> {

    @Override
    public @Nullable Long convertToDatabaseColumn(@Nullable Amount amount) {
        return amount == null ? null : amount.minor();
    }

    @Override
    public @Nullable Amount convertToEntityAttribute(@Nullable Long minor) {
        return minor == null ? null : Amount.of(minor);
    }
}
