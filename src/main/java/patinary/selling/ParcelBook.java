package patinary.selling;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.web.NotFound;

/** Her ways of packing, read and kept; the latest packing of a channel is one too, without a name. */
@Service
@Transactional
class ParcelBook {

    /** A way of packing as a page shows it. */
    record Kept(UUID id, String name, long version, List<WrapLine> wraps) {

        /** The quantities as typed, in one line of text. */
        public String summary() {
            return String.join(", ", wraps.stream().map(wrap -> wrap.quantity).toList());
        }
    }

    private record LastRow(UUID supplyId, String typed, boolean estimated) {}

    private final Parcels parcels;
    private final JdbcClient jdbc;

    ParcelBook(Parcels parcels, JdbcClient jdbc) {
        this.parcels = parcels;
        this.jdbc = jdbc;
    }

    @Transactional(readOnly = true)
    public List<Kept> all() {
        return parcels.findAllByOrderByName().stream().map(ParcelBook::kept).toList();
    }

    @Transactional(readOnly = true)
    public Optional<Kept> find(UUID id) {
        return parcels.findById(id).map(ParcelBook::kept);
    }

    /** What the latest packed sale of a channel was packed in, other than one sale; nothing where none was. */
    @Transactional(readOnly = true)
    public List<WrapLine> last(UUID channel, UUID otherThan) {
        return jdbc.sql("""
                        select w.supply_id, w.typed, w.estimated
                        from sale_wrap w
                        where w.sale_id = (select d.id
                                           from document d
                                           join sale s on s.id = d.id
                                           where s.channel_id = :channel and d.id <> :other
                                             and exists (select 1 from sale_wrap any_wrap where any_wrap.sale_id = d.id)
                                           order by d.doc_date desc, d.recorded_at desc, d.id
                                           fetch first 1 row only)
                        order by w.line""").param("channel", channel).param("other", otherThan).query(LastRow.class).list().stream()
                .map(row -> new WrapLine(row.supplyId().toString(), row.typed(), row.estimated()))
                .toList();
    }

    @Transactional(readOnly = true)
    public boolean isNameTaken(String name, UUID own) {
        return parcels.findAllByOrderByName().stream()
                .anyMatch(parcel ->
                        parcel.name().equalsIgnoreCase(name) && !parcel.id().equals(own));
    }

    /** Adds it, or changes the one of that id where it is still as it was when the form was drawn. */
    public void save(UUID id, long version, String name, List<ParcelWrap> wraps) {
        Optional<Parcel> stored = parcels.findById(id);
        if (stored.isEmpty()) {
            parcels.save(new Parcel(id, name, wraps));
            return;
        }
        if (stored.get().version() != version) {
            throw new OptimisticLockingFailureException("Parcel " + id + " is stale");
        }
        stored.get().rewrite(name, wraps);
    }

    /** What was packed this way stays as it is. */
    public void remove(UUID id) {
        parcels.delete(parcels.findById(id).orElseThrow(() -> new NotFound("Parcel " + id)));
    }

    private static Kept kept(Parcel parcel) {
        return new Kept(
                parcel.id(),
                parcel.name(),
                parcel.version(),
                parcel.wraps().stream()
                        .map(wrap -> new WrapLine(wrap.supplyId().toString(), wrap.typed(), wrap.estimated()))
                        .toList());
    }
}
