package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;
import patinary.money.Amount;

/** Books kept in memory as the program keeps them in its database: moves of strands, postings, and what has no cost yet. */
final class KeptInMemory implements KeptBooks {

    private final Map<UUID, List<StrandMove>> moves = new HashMap<>();
    private final Map<UUID, List<Entry>> entries = new HashMap<>();
    private final Map<String, Integer> uncosted = new HashMap<>();
    private final Map<UUID, NavigableMap<LocalDate, String>> carried = new HashMap<>();
    private final Carried.Rule rule;
    private int begun;
    private int fallenBack;

    KeptInMemory(Carried.Rule rule) {
        this.rule = rule;
    }

    Map<UUID, List<Entry>> entries() {
        return entries;
    }

    Map<String, Integer> uncosted() {
        return uncosted;
    }

    void take(Change change, Rederivation.Result result) {
        change.ids().forEach(moves::remove);
        // By way of its text, as the database keeps it.
        change.present()
                .forEach(document -> moves.put(
                        document.document().id(),
                        Strands.of(document).stream()
                                .map(move -> new StrandMove(
                                        move.strand(),
                                        move.document(),
                                        move.number(),
                                        MoveText.read(MoveText.of(move.move()))))
                                .toList()));
        change.ids().forEach(entries::remove);
        result.derived().forEach((id, list) -> {
            if (list.isEmpty()) {
                entries.remove(id);
            } else {
                entries.put(id, list);
            }
        });
        uncosted.keySet()
                .removeIf(text -> result.supplies().stream().anyMatch(supply -> text.contains(supply.toString())));
        uncosted.putAll(texts(result.uncosted()));
        change.from().ifPresent(from -> carry(result, from.date()));
    }

    private void carry(Rederivation.Result result, LocalDate day) {
        result.supplies().forEach(supply -> days(supply).tailMap(day, false).clear());
        result.carried()
                .forEach(one -> assertThat(days(one.supply()).put(one.day(), CarriedText.of(one.places())))
                        .as("carried forward to %s already", one.day())
                        .isNull());
    }

    private NavigableMap<LocalDate, String> days(UUID supply) {
        return carried.computeIfAbsent(supply, id -> new TreeMap<>());
    }

    /** All that is carried forward. */
    List<Carried> carried() {
        return carried.entrySet().stream()
                .flatMap(supply -> supply.getValue().entrySet().stream()
                        .map(day -> new Carried(supply.getKey(), day.getKey(), CarriedText.read(day.getValue()))))
                .toList();
    }

    /** How often something was found carried forward. */
    int begun() {
        return begun;
    }

    /** How often an earlier one had to be looked for, or the first move. */
    int fallenBack() {
        return fallenBack;
    }

    static Map<String, Integer> texts(List<Replay.Uncosted> uses) {
        Map<String, Integer> texts = new HashMap<>();
        uses.forEach(use -> texts.merge(
                use.document().id() + " " + use.supply() + " " + use.place() + " "
                        + use.quantity().stripTrailingZeros().toPlainString() + " " + use.throughPot(),
                1,
                Integer::sum));
        return texts;
    }

    @Override
    public List<StrandMove> movesOf(Collection<UUID> documents) {
        return documents.stream()
                .flatMap(id -> moves.getOrDefault(id, List.of()).stream())
                .toList();
    }

    @Override
    public List<StrandMove> strands(Collection<UUID> strands) {
        return moves.values().stream()
                .flatMap(List::stream)
                .filter(move -> strands.contains(move.strand()))
                .toList();
    }

    @Override
    public List<StrandMove> strandFrom(UUID strand, LocalDate day) {
        return strands(List.of(strand)).stream()
                .filter(move -> !move.document().date().isBefore(day))
                .toList();
    }

    @Override
    public List<Carried> carried(Collection<UUID> supplies, LocalDate day) {
        List<Carried> latest = supplies.stream()
                .flatMap(supply -> carried().stream()
                        .filter(one -> one.supply().equals(supply) && !one.day().isAfter(day))
                        .max(Comparator.comparing(Carried::day))
                        .stream())
                .toList();
        begun += latest.size();
        return latest;
    }

    @Override
    public Optional<Carried> carriedWhole(UUID supply, LocalDate day) {
        fallenBack++;
        return carried().stream()
                .filter(one -> one.supply().equals(supply) && !one.day().isAfter(day) && one.isWhole())
                .max(Comparator.comparing(Carried::day));
    }

    @Override
    public Carried.Rule carriedRule() {
        return rule;
    }

    @Override
    public List<Entry> entries(Collection<UUID> documents) {
        return documents.stream()
                .flatMap(id -> entries.getOrDefault(id, List.of()).stream())
                .toList();
    }

    @Override
    public List<Entry> pieceCosts(Collection<UUID> pieces) {
        return all().filter(Entry::isPieceCost)
                .filter(entry -> pieces.contains(
                                Objects.requireNonNull(entry.posting().tags().piece()))
                        || pieces.contains(Objects.requireNonNull(entry.intended())))
                .toList();
    }

    @Override
    public Amount heldBefore(UUID place, LocalDate day) {
        return all().filter(
                        entry -> entry.isOf(place) && entry.document().date().isBefore(day))
                .map(entry -> entry.posting().amount())
                .collect(Amount.sum());
    }

    @Override
    public List<Entry> moneyFrom(UUID place, LocalDate day) {
        return all().filter(
                        entry -> entry.isOf(place) && !entry.document().date().isBefore(day))
                .toList();
    }

    private Stream<Entry> all() {
        return entries.values().stream().flatMap(List::stream);
    }
}
