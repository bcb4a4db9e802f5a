package patinary.listing;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.finishes.CautionBook;
import patinary.shop.CurrentShop;

/** Lines of care: those that come with the program in her words, and her own for what her supplies were used on. */
@Repository
@Transactional
class Care {

    /** Her words for a line that comes with the program. */
    record Word(String careId, String words, boolean leftOut) {}

    /** A line of her own, for a supply or for all supplies of a line. */
    record Own(UUID id, @Nullable UUID supplyId, @Nullable UUID supplyLineId, String name, String words) {}

    private final JdbcClient jdbc;
    private final CareLines lines;
    private final CautionBook cautions;
    private final CurrentShop shop;

    Care(JdbcClient jdbc, CareLines lines, CautionBook cautions, CurrentShop shop) {
        this.jdbc = jdbc;
        this.lines = lines;
        this.cautions = cautions;
        this.shop = shop;
    }

    /** What is said of an offer's pieces, each line once: the program's lines first, then her own. */
    @Transactional(readOnly = true)
    List<String> of(OfferFacts offer) {
        List<String> words = offer.words();
        List<String> ids = cautions.about(List.of(), words).stream()
                .map(CautionBook.Text::id)
                .toList();
        Map<String, Word> hers = words();
        Stream<String> brought = lines.of(shop.today(), words, ids).stream()
                .map(line -> said(line, Optional.ofNullable(hers.get(line.id()))))
                .flatMap(Optional::stream);
        Stream<String> own =
                own().stream().filter(line -> isUsed(line, offer.supplies())).map(Own::words);
        return Stream.concat(brought, own).distinct().toList();
    }

    /** The program's line in her words; nothing where she leaves it out. */
    private static Optional<String> said(CareLine line, Optional<Word> hers) {
        return hers.isEmpty()
                ? Optional.of(line.text())
                : hers.filter(word -> !word.leftOut()).map(Word::words);
    }

    private static boolean isUsed(Own line, List<OfferFacts.Used> supplies) {
        return supplies.stream()
                .anyMatch(used ->
                        used.id().equals(line.supplyId()) || used.lineId().equals(line.supplyLineId()));
    }

    /** The program's lines of today. */
    @Transactional(readOnly = true)
    List<CareLine> brought() {
        return lines.on(shop.today());
    }

    /** Her words, by the id of the line. */
    @Transactional(readOnly = true)
    Map<String, Word> words() {
        return jdbc.sql("select care_id, words, left_out from care_word").query(Word.class).list().stream()
                .collect(Collectors.toMap(Word::careId, Function.identity()));
    }

    /** By what they are of. */
    @Transactional(readOnly = true)
    List<Own> own() {
        return jdbc.sql("""
                        select c.id, c.supply_id, c.supply_line_id, coalesce(ul.name || ': ' || u.name, l.name) as name, c.words
                        from supply_care c
                        left join supply u on u.id = c.supply_id
                        left join supply_line ul on ul.id = u.supply_line_id
                        left join supply_line l on l.id = c.supply_line_id
                        order by 4, c.words, c.id""").query(Own.class).list();
    }

    /** Keeps her words for one of the program's lines; empty words that are not left out take hers away. */
    void say(String id, String words, boolean leftOut) {
        jdbc.sql("delete from care_word where care_id = ?").param(id).update();
        if (leftOut || !words.isBlank()) {
            jdbc.sql("insert into care_word (care_id, words, left_out) values (?, ?, ?)")
                    .params(id, words, leftOut)
                    .update();
        }
    }

    /** Adds a line of her own for a supply or a supply line. @return whether there is such a thing */
    boolean add(UUID of, String words) {
        return Stream.of("supply", "supply_line")
                        .mapToInt(table -> jdbc.sql("insert into supply_care (id, " + table + "_id, words)"
                                        + " select ?, t.id, ? from " + table + " t where t.id = ?")
                                .params(UUID.randomUUID(), Objects.requireNonNull(words), of)
                                .update())
                        .sum()
                > 0;
    }

    void remove(UUID id) {
        jdbc.sql("delete from supply_care where id = ?").param(id).update();
    }
}
