package patinary.spending;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.Amount;

/** What the books say about cash boxes and their counts. */
@Repository
@Transactional(readOnly = true)
class TillBooks {

    /** A cash box and what it holds by the books. */
    record Box(UUID id, String name, long amountMinor) {}

    /** A count and what it found: over above zero, short below. */
    record Counted(UUID id, LocalDate docDate, String place, long countedMinor, long overMinor) {}

    /** How a day went for one place, without the count at its end; all in minor units. */
    record Day(long beforeMinor, long inMinor, long outMinor) {

        /** What must be there at the end of the day. */
        public Amount expected() {
            return Amount.of(beforeMinor + inMinor - outMinor);
        }
    }

    private final JdbcClient jdbc;

    TillBooks(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Box> boxes() {
        return jdbc.sql("""
                        select mp.id, mp.name, coalesce(ml.amount_minor, 0) as amount_minor
                        from money_place mp
                        left join money_left ml on ml.place_id = mp.id
                        where mp.kind = 'CASH'
                        order by lower(mp.name)""").query(Box.class).list();
    }

    /** The latest counts, the newest first. */
    List<Counted> latest(int most) {
        return jdbc.sql("""
                        select t.id, d.doc_date, mp.name as place, t.counted_minor, coalesce(p.amount_minor, 0) as over_minor
                        from till_count t
                        join document d on d.id = t.id
                        join money_place mp on mp.id = t.place_id
                        left join posting p on p.document_id = t.id and p.account = 'MONEY'
                        order by d.doc_date desc, mp.name
                        fetch next :most rows only""").param("most", most).query(Counted.class).list();
    }

    /** A day at a place; that day's count is left out, as it is taken after everything else. */
    Day day(UUID place, LocalDate day) {
        return jdbc.sql("""
                        select cast(coalesce(sum(case when p.doc_date < :day then p.amount_minor end), 0) as bigint)
                                   as before_minor,
                               cast(coalesce(sum(case when p.doc_date = :day and p.amount_minor > 0
                                                      then p.amount_minor end), 0) as bigint) as in_minor,
                               cast(coalesce(sum(case when p.doc_date = :day and p.amount_minor < 0
                                                      then -p.amount_minor end), 0) as bigint) as out_minor
                        from posting p
                        where p.account = 'MONEY' and p.place_id = :place and p.doc_date <= :day
                          and not (p.doc_date = :day and p.document_id in (select t.id from till_count t))""")
                .param("place", place)
                .param("day", day)
                .query(Day.class)
                .single();
    }

    /** Whether another count of the place bears the same day. */
    boolean countedAlready(UUID place, LocalDate day, UUID own) {
        return jdbc.sql("""
                                select count(*) from till_count t join document d on d.id = t.id
                                where t.place_id = :place and d.doc_date = :day and t.id <> :own""")
                        .param("place", place)
                        .param("day", day)
                        .param("own", own)
                        .query(Long.class)
                        .single()
                > 0;
    }
}
