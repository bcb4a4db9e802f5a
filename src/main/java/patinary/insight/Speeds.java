package patinary.insight;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.Amount;
import patinary.survival.Exit;
import patinary.web.Page;
import patinary.web.Window;

/** Reads how fast pieces sell: a handful of queries, however many pieces there are. */
@Repository
@Transactional(readOnly = true)
class Speeds {

    private static final String TAKEN_OVER = """
            select op.piece_id, min(d.doc_date) as on_day
            from opening_piece op
            join document d on d.id = op.opening_id
            group by op.piece_id""";

    private static final String FIRST_PRICES = """
            select opr.offer_id, opr.price_minor
            from offer_price opr
            where not exists (select 1 from offer_price earlier
                              where earlier.offer_id = opr.offer_id and earlier.valid_from < opr.valid_from)""";

    private static final int MONTHS = 3;

    /**
     * A page of speeds.
     *
     * @param bands the three price bands, or null where nothing has a price
     * @param only what the rounds may be narrowed to
     */
    record Answer(SpeedTable table, @Nullable PriceBands bands, List<Only> only) {}

    /** One group that the whole page may be narrowed to. */
    record Only(SpeedBy by, String name) {

        /** How it stands in an address. */
        public String word() {
            return by.word() + ":" + name;
        }
    }

    private record PieceRow(UUID id, String code, String title) {}

    /** A piece with one of its rounds, as the page lists it. */
    record RoundPiece(UUID id, String code, String title, LocalDate from, int days, String exit) {

        private static RoundPiece of(Round round, @Nullable PieceRow piece) {
            return new RoundPiece(
                    round.piece(),
                    piece == null ? "" : piece.code(),
                    piece == null ? "" : piece.title(),
                    round.from(),
                    round.stay().days(),
                    round.stay().exit().name().toLowerCase(Locale.ROOT));
        }
    }

    private record GroupRow(UUID pieceId, String groupedBy, String name) {}

    private final JdbcClient jdbc;
    private final Moves moves;

    Speeds(JdbcClient jdbc, Moves moves) {
        this.jdbc = jdbc;
        this.moves = moves;
    }

    /** @param only a word of {@link Only}, or empty for the whole shop */
    Answer answer(SpeedBy by, String only, LocalDate today) {
        Map<String, Map<UUID, List<String>>> groups = groups();
        List<Only> choices = choices(groups);
        List<Round> rounds = rounds(today);
        List<Round> those = choices.stream()
                .filter(choice -> choice.word().equals(only))
                .findFirst()
                .map(choice -> rounds.stream()
                        .filter(round -> names(groups, choice.by(), round).contains(choice.name()))
                        .toList())
                .orElse(rounds);
        Map<UUID, Amount> prices = prices();
        PriceBands bands = bands(those, prices);
        Function<Round, Collection<String>> grouping = switch (by) {
            case SEASON -> round -> List.of(String.valueOf((round.from().getMonthValue() - 1) / MONTHS + 1));
            case PRICE -> round -> band(round, prices, bands);
            default -> round -> names(groups, by, round);
        };
        return new Answer(SpeedTable.of(those, grouping), bands, choices);
    }

    List<Round> rounds(LocalDate today) {
        return Rounds.of(moves.facts(), days(), today);
    }

    /** The pieces of some rounds, the quickest sold first, then what is still on offer, then what was withdrawn. */
    Page<RoundPiece> pieces(List<Round> rounds, Window window) {
        List<Round> shown = rounds.stream()
                .sorted(Comparator.comparing((Round round) -> round.stay().exit() == Exit.WITHDRAWN)
                        .thenComparing(round -> round.stay().exit())
                        .thenComparing(round -> round.stay().days()))
                .skip(window.offset())
                .limit(window.size())
                .toList();
        if (shown.isEmpty()) {
            return Page.of(window, List.of(), rounds.size());
        }
        Map<UUID, PieceRow> names = jdbc
                .sql("select id, code, title from piece where id in (:ids)")
                .param("ids", shown.stream().map(Round::piece).toList())
                .query(PieceRow.class)
                .stream()
                .collect(Collectors.toMap(PieceRow::id, Function.identity()));
        return Page.of(
                window,
                shown.stream()
                        .map(round -> RoundPiece.of(round, names.get(round.piece())))
                        .toList(),
                rounds.size());
    }

    private static List<String> names(Map<String, Map<UUID, List<String>>> groups, SpeedBy by, Round round) {
        return groups.getOrDefault(by.word(), Map.of()).getOrDefault(round.piece(), List.of(""));
    }

    private static @Nullable PriceBands bands(List<Round> rounds, Map<UUID, Amount> prices) {
        List<Amount> asked = rounds.stream()
                .map(round -> prices.get(round.offer()))
                .filter(java.util.Objects::nonNull)
                .toList();
        return asked.isEmpty() ? null : PriceBands.of(asked);
    }

    private static List<String> band(Round round, Map<UUID, Amount> prices, @Nullable PriceBands bands) {
        Amount price = prices.get(round.offer());
        return price == null || bands == null
                ? List.of("")
                : List.of(String.valueOf(bands.of(price).ordinal() + 1));
    }

    private static List<Only> choices(Map<String, Map<UUID, List<String>>> groups) {
        List<Only> choices = new ArrayList<>();
        for (SpeedBy by : SpeedBy.values()) {
            if (by.ofPieces()) {
                groups.getOrDefault(by.word(), Map.of()).values().stream()
                        .flatMap(List::stream)
                        .filter(name -> !name.isEmpty())
                        .distinct()
                        .sorted(String.CASE_INSENSITIVE_ORDER)
                        .forEach(name -> choices.add(new Only(by, name)));
            }
        }
        return choices;
    }

    private Map<String, Map<UUID, List<String>>> groups() {
        return jdbc.sql("select piece_id, grouped_by, name from piece_group").query(GroupRow.class).stream()
                .collect(Collectors.groupingBy(
                        GroupRow::groupedBy,
                        Collectors.groupingBy(
                                GroupRow::pieceId, Collectors.mapping(GroupRow::name, Collectors.toList()))));
    }

    private Map<UUID, LocalDate> days() {
        Map<UUID, LocalDate> days = new HashMap<>();
        jdbc.sql(TAKEN_OVER).query(row -> {
            days.put(row.getObject(1, UUID.class), row.getObject(2, LocalDate.class));
        });
        return days;
    }

    private Map<UUID, Amount> prices() {
        Map<UUID, Amount> prices = new HashMap<>();
        jdbc.sql(FIRST_PRICES).query(row -> {
            prices.put(row.getObject(1, UUID.class), Amount.of(row.getLong(2)));
        });
        return prices;
    }
}
