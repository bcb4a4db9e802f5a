package patinary.insight;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Readings;

/** Reads which groups a page may be narrowed to, and which pieces belong to the chosen ones. */
@Repository
@Transactional(readOnly = true)
class Traits {

    private static final String CHOICES = """
            select 'STYLE' as trait, name from style
            union all select 'KIND', name from object_kind
            union all select 'LINE', name from supply_line
            union all select 'FINISH', name from finish
            union all select 'CHANNEL', name from channel
            union all select distinct 'MATERIAL', trim(material) from piece where trim(material) <> ''""";

    private static final Map<Trait, String> PIECES = Map.of(
            Trait.STYLE, "select p.id from piece p join style s on s.id = p.style_id where s.name = :name",
            Trait.KIND, "select p.id from piece p join object_kind k on k.id = p.kind_id where k.name = :name",
            Trait.MATERIAL, "select p.id from piece p where trim(p.material) = :name",
            Trait.LINE, """
                    select distinct bup.piece_id
                    from bench_use_piece bup
                    join bench_use bu on bu.bench_entry_id = bup.bench_entry_id and bu.line = bup.line
                    join supply su on su.id = bu.supply_id
                    join supply_line sl on sl.id = su.supply_line_id
                    where sl.name = :name""",
            Trait.FINISH, """
                    select distinct bp.piece_id
                    from bench_piece bp
                    join bench_entry be on be.id = bp.bench_entry_id
                    join finish f on f.id = be.finish_id
                    where f.name = :name""",
            Trait.CHANNEL, """
                    select op.piece_id
                    from offer_piece op
                    join offer_channel oc on oc.offer_id = op.offer_id
                    join channel c on c.id = oc.channel_id
                    where c.name = :name
                    union
                    select sp.piece_id
                    from sale_piece sp
                    join sale s on s.id = sp.sale_id
                    join channel c on c.id = s.channel_id
                    where c.name = :name
                      and sp.piece_id not in (select any_offer.piece_id from offer_piece any_offer)""");

    private record ChoiceRow(String trait, String name) {}

    private enum Kept {
        CHOICES
    }

    private record Belonging(Only only) {}

    private final JdbcClient jdbc;
    private final Moves moves;
    private final Readings readings;

    Traits(JdbcClient jdbc, Moves moves, Readings readings) {
        this.jdbc = jdbc;
        this.moves = moves;
        this.readings = readings;
    }

    /** What is asked for and no group of the shop is not asked for. */
    Narrowing narrowing(Asked asked) {
        List<Only> choices = readings.ahead(Kept.CHOICES, this::choices);
        List<Only> chosen = Stream.of(asked.only, asked.also)
                .flatMap(word -> Only.of(word, choices).stream())
                .distinct()
                .toList();
        // Of what may be chosen the prices are told as thirds, so that no page reads them all to offer them.
        PriceBands bands = chosen.stream().anyMatch(only -> only.by() == Trait.PRICE) ? moves.bands() : null;
        Set<UUID> pieces = null;
        for (Only only : chosen) {
            Set<UUID> those = readings.of(new Belonging(only), () -> pieces(only));
            pieces = pieces == null ? those : both(pieces, those);
        }
        return new Narrowing(chosen, pieces, choices, bands);
    }

    private static Set<UUID> both(Set<UUID> one, Set<UUID> other) {
        return one.stream().filter(other::contains).collect(Collectors.toUnmodifiableSet());
    }

    private List<Only> choices() {
        List<Only> choices = new ArrayList<>(jdbc.sql(CHOICES).query(ChoiceRow.class).stream()
                .map(row -> new Only(Trait.valueOf(row.trait()), row.name()))
                .toList());
        IntStream.rangeClosed(1, PriceBands.Band.values().length)
                .forEach(band -> choices.add(new Only(Trait.PRICE, String.valueOf(band))));
        IntStream.rangeClosed(1, Quarters.ALL)
                .forEach(quarter -> choices.add(new Only(Trait.SEASON, String.valueOf(quarter))));
        choices.sort(java.util.Comparator.comparing(Only::by).thenComparing(Only::name, String.CASE_INSENSITIVE_ORDER));
        return List.copyOf(choices);
    }

    private Set<UUID> pieces(Only only) {
        return switch (only.by()) {
            case PRICE -> named(moves.bandsOfPieces(), only.name());
            case SEASON -> named(moves.seasonsOfPieces(), only.name());
            default ->
                new HashSet<>(jdbc.sql(PIECES.get(only.by()))
                        .param("name", only.name())
                        .query(UUID.class)
                        .list());
        };
    }

    private static Set<UUID> named(Map<UUID, String> groups, String name) {
        return groups.entrySet().stream()
                .filter(group -> group.getValue().equals(name))
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }
}
