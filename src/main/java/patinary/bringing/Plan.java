package patinary.bringing;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.selling.ManySales;

/** What would become of a file. */
record Plan(List<Planned> orders) {

    /** What becomes of an order. */
    enum Standing {
        /** It becomes a sale. */
        NEW,
        /** The books have a sale of this channel with this number. */
        KNOWN,
        /** All of its rows are left out. */
        OUT,
        /** It stays out until something is put right. */
        WRONG
    }

    /**
     * One order.
     *
     * @param sale what is recorded, where it is new; what the books refused, where it is wrong for that
     * @param faults why it stays out
     */
    record Planned(FileOrder order, Standing standing, ManySales.@Nullable Typed sale, List<Fault> faults) {

        private Planned wrong(List<ManySales.Fault> refusals) {
            return new Planned(
                    order,
                    Standing.WRONG,
                    sale,
                    refusals.stream().map(this::fault).toList());
        }

        private Fault fault(ManySales.Fault refusal) {
            boolean ofLine =
                    refusal.line() >= 0 && refusal.line() < order.sold().size();
            Sheet.Row row = ofLine
                    ? order.sold().get(refusal.line()).row()
                    : order.rows().get(0);
            return new Fault(
                    row.number(),
                    row.line(),
                    Meaning.ofField(refusal.field()).orElse(null),
                    refusal.key(),
                    refusal.arguments());
        }
    }

    List<Planned> with(Standing standing) {
        return orders.stream().filter(order -> order.standing() == standing).toList();
    }

    List<ManySales.Typed> sales() {
        return with(Standing.NEW).stream()
                .map(Planned::sale)
                .filter(Objects::nonNull)
                .toList();
    }

    List<Fault> faults() {
        return orders.stream().flatMap(order -> order.faults().stream()).toList();
    }

    /** The orders that want a piece which another sale has: she settles each of them by hand. */
    List<ManySales.Typed> soldTwice() {
        return with(Standing.WRONG).stream()
                .filter(order ->
                        order.faults().stream().anyMatch(fault -> fault.key().equals(ManySales.SOLD_TWICE)))
                .map(Planned::sale)
                .filter(Objects::nonNull)
                .toList();
    }

    /** The same plan without sales that the books would not take, and why. */
    Plan without(Map<UUID, List<ManySales.Fault>> refusals) {
        return new Plan(orders.stream()
                .map(order -> order.sale() != null
                                && refusals.containsKey(order.sale().id())
                        ? order.wrong(refusals.get(order.sale().id()))
                        : order)
                .toList());
    }

    /** Tells whether two plans would record the same. */
    String seal() {
        return Mapping.hash(sales().toString());
    }
}
