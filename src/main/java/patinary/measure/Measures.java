package patinary.measure;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Turns what was typed for one supply into a quantity in the base unit that supply is used by, or says why not. */
public final class Measures {

    private Measures() {}

    /** What came of a typed quantity. */
    public sealed interface Resolution permits Resolved, Refused {}

    /**
     * It could be read.
     *
     * @param quantity in the base unit of the supply's dimension, exact
     */
    public record Resolved(Quantity quantity) implements Resolution {}

    /**
     * It could not be read, or measures something else.
     *
     * @param messageKey the reason, as in {@link UnreadableQuantity#messageKey()} and {@link WrongDimension#messageKey()};
     *     or {@code measure.error.unitMissing}, a bare number for a supply that is not counted
     * @param arguments the message's arguments
     */
    public record Refused(String messageKey, List<String> arguments) implements Resolution {}

    /**
     * Reads units, cuts, bare numbers of counted things, and the maker's own measures ({@code 2 dabs}, {@code dab},
     * {@code 1/2 dab}).
     *
     * @param text what was typed
     * @param supplyDimension what the supply is used by
     * @param namedMeasures her own measures that apply to this supply; of two with one name, the one that fits wins
     */
    public static Resolution resolve(String text, Dimension supplyDimension, Collection<NamedMeasure> namedMeasures) {
        String plain = NumberText.plain(text);
        if (supplyDimension != Dimension.COUNT && QuantityText.isBareNumber(plain)) {
            return new Refused("measure.error.unitMissing", List.of(plain));
        }
        try {
            Quantity quantity = named(plain, supplyDimension, namedMeasures).orElseGet(() -> QuantityText.read(text));
            quantity.require(supplyDimension);
            return new Resolved(Quantity.ofBase(quantity.inBase(), supplyDimension));
        } catch (UnreadableQuantity unreadable) {
            return new Refused(unreadable.messageKey(), unreadable.arguments());
        } catch (WrongDimension wrong) {
            return new Refused(wrong.messageKey(), wrong.arguments());
        }
    }

    /** The one of her measures that a typed quantity is told in; nothing where it is told in a unit. */
    public static Optional<NamedMeasure> toldIn(String text, Collection<NamedMeasure> namedMeasures) {
        return QuantityText.counted(NumberText.plain(text))
                .flatMap(counted ->
                        called(counted.name(), namedMeasures).stream().findFirst());
    }

    private static Optional<Quantity> named(String plain, Dimension wanted, Collection<NamedMeasure> namedMeasures) {
        return QuantityText.counted(plain).flatMap(counted -> {
            List<NamedMeasure> called = called(counted.name(), namedMeasures);
            return called.stream()
                    .filter(m -> m.quantity().dimension() == wanted)
                    .findFirst()
                    .or(() -> called.stream().findFirst())
                    .map(m -> m.quantity().times(counted.number()));
        });
    }

    /** A word that is exactly the name of one never means another. */
    private static List<NamedMeasure> called(String word, Collection<NamedMeasure> namedMeasures) {
        List<NamedMeasure> exactly =
                namedMeasures.stream().filter(measure -> measure.isCalled(word)).toList();
        return exactly.isEmpty()
                ? namedMeasures.stream()
                        .filter(measure -> measure.isLikelyCalled(word))
                        .toList()
                : exactly;
    }
}
