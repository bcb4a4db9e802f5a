package patinary.bench;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.ledger.Trail;
import patinary.measure.Dimension;
import patinary.supplies.Supplies;
import patinary.supplies.Supply;
import patinary.web.NotFound;

/** The supplies that leftovers of pots become: made with their entry, and gone with it while nobody used them. */
@Component
class KeptPots {

    private static final int NAME = 120;

    private final Supplies supplies;
    private final JdbcClient jdbc;
    private final MessageSource messages;
    private final Trail trail;

    KeptPots(Supplies supplies, JdbcClient jdbc, MessageSource messages, Trail trail) {
        this.supplies = supplies;
        this.jdbc = jdbc;
        this.messages = messages;
        this.trail = trail;
    }

    /** By when each kept pot is to be used, as far as that is known. */
    Map<UUID, LocalDate> useBys() {
        Map<UUID, LocalDate> days = new HashMap<>();
        jdbc.sql("select kept_as, use_by from bench_pot where kept_as is not null and use_by is not null")
                .query(row -> {
                    days.put(
                            row.getObject("kept_as", UUID.class),
                            row.getDate("use_by").toLocalDate());
                });
        return days;
    }

    /** The kept pots that an entry, as it is stored, names and that others used: it cannot do without them. */
    List<String> used(UUID entry, List<Pot> stillKept) {
        List<UUID> still = Stream.concat(
                        Stream.of(entry), stillKept.stream().map(Pot::keptAs).filter(java.util.Objects::nonNull))
                .toList();
        return jdbc.sql("""
                        select s.name from bench_pot p join supply s on s.id = p.kept_as
                        where p.bench_entry_id = :entry and p.kept_as not in (:still)
                          and (exists (select 1 from bench_use u where u.supply_id = s.id)
                               or exists (select 1 from supply_count c where c.supply_id = s.id)
                               or exists (select 1 from bench_mishap m where m.supply_id = s.id))
                        order by s.name
                        """)
                .param("entry", entry)
                .param("still", still)
                .query(String.class)
                .list();
    }

    /** Makes the supplies of pots that are kept from now on; to be called before the entry is stored. */
    void make(UUID entry, BenchContent content) {
        for (Pot pot : content.handling().pots()) {
            if (pot.keptAs() != null && !isKeptBy(entry, pot.keptAs())) {
                if (supplies.findById(pot.keptAs()).isPresent()) {
                    throw new NotFound("pot " + pot.keptAs());
                }
                trail.thing("supply", pot.keptAs());
                UUID line = line(content, pot);
                supplies.save(new Supply(pot.keptAs(), facts(line, freeName(line, pot, content))));
            }
        }
    }

    /** The supplies that an entry keeps, as it is stored. */
    List<UUID> of(UUID entry) {
        return jdbc.sql("select kept_as from bench_pot where bench_entry_id = ? and kept_as is not null")
                .param(entry)
                .query(UUID.class)
                .list();
    }

    /** Removes what is kept no longer; to be called after the entry is stored. */
    void clear(UUID entry, List<UUID> before) {
        List<UUID> now = of(entry);
        before.stream().filter(pot -> !now.contains(pot)).forEach(this::remove);
    }

    private void remove(UUID pot) {
        trail.thing("supply", pot);
        supplies.findById(pot).ifPresent(supplies::delete);
    }

    private boolean isKeptBy(UUID entry, UUID supply) {
        return of(entry).contains(supply);
    }

    /** A pot belongs to the line of what went in first; a cup of nothing new to that of the pot it was poured from. */
    private UUID line(BenchContent content, Pot pot) {
        return supplies.findById(first(content, pot)).orElseThrow().facts().lineId();
    }

    private static UUID first(BenchContent content, Pot pot) {
        Handling how = content.handling();
        return how.potUses().stream()
                .filter(inside -> inside.pot() == pot.number())
                .flatMap(inside -> content.uses().stream().filter(use -> use.line() == inside.line()))
                .map(SupplyUse::supplyId)
                .findFirst()
                .orElseGet(() -> how.pots().stream()
                        .filter(other -> Integer.valueOf(other.number()).equals(pot.pouredFrom()))
                        .findFirst()
                        .map(other -> first(content, other))
                        .orElseThrow());
    }

    private String freeName(UUID line, Pot pot, BenchContent content) {
        String called = pot.name().isBlank()
                ? supplies.findById(first(content, pot)).orElseThrow().facts().name()
                : pot.name();
        String name = messages.getMessage(
                "bench.pot.kept-name",
                new Object[] {called, content.date().toString()},
                LocaleContextHolder.getLocale());
        String free = name.length() > NAME ? name.substring(name.length() - NAME) : name;
        for (int i = 2; supplies.existsByLineIdAndNameIgnoreCase(line, free); i++) {
            free = name + " (" + i + ")";
        }
        return free;
    }

    private static Supply.Facts facts(UUID line, String name) {
        return new Supply.Facts(line, name, Dimension.VOLUME, null, null, List.of(), List.of());
    }
}
