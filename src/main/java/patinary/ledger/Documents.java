package patinary.ledger;

import jakarta.persistence.EntityManager;
import jakarta.persistence.metamodel.EntityType;
import java.lang.reflect.Modifier;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.hibernate.Session;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;

/** All documents, whatever feature they belong to. */
@Repository
class Documents {

    private final EntityManager entities;
    private final JdbcTemplate jdbc;
    private final Map<Class<?>, WholeDocument<?>> whole = new ConcurrentHashMap<>();

    Documents(EntityManager entities, JdbcTemplate jdbc) {
        this.entities = entities;
        this.jdbc = jdbc;
    }

    /**
     * Every document as costing sees it: one query per kind, lines fetched in batches. They are read beside what the change has
     * in hand, on the same connection, and forgotten kind by kind: nothing is looked through for changes afterwards.
     */
    List<DocumentMoves> moves() {
        try (Session reading = beside()) {
            return entities.getMetamodel().getEntities().stream()
                    .map(EntityType::getJavaType)
                    .filter(type -> Document.class.isAssignableFrom(type) && !Modifier.isAbstract(type.getModifiers()))
                    .map(type -> all(reading, type.asSubclass(Document.class)))
                    .flatMap(Collection::stream)
                    .toList();
        }
    }

    /** A document to look at, with all its lists; read beside what the change has in hand, so nothing that is done to it is stored. */
    <D extends Document> Optional<D> read(Class<D> type, UUID id) {
        WholeDocument<?> question = whole.computeIfAbsent(
                type, one -> new WholeDocument<>(entities.getMetamodel().entity(type)));
        try (Session reading = beside()) {
            return question.read(reading, id).map(type::cast);
        }
    }

    private Session beside() {
        Session reading =
                entities.unwrap(Session.class).sessionWithOptions().connection().openSession();
        reading.setDefaultReadOnly(true);
        return reading;
    }

    private static List<DocumentMoves> all(Session reading, Class<? extends Document> type) {
        List<DocumentMoves> moves =
                reading.createQuery("select d from " + type.getSimpleName() + " d", type).getResultList().stream()
                        .map(document -> new DocumentMoves(document.ref(), List.copyOf(document.moves())))
                        .toList();
        reading.clear();
        return moves;
    }

    <D extends Document> Optional<D> find(Class<D> type, UUID id) {
        return Optional.ofNullable(entities.find(type, id));
    }

    /** Of which kind those of the documents are that are stored already, by their ids. */
    Map<UUID, DocumentKind> kinds(Collection<? extends Document> several) {
        Map<UUID, DocumentKind> kinds = new HashMap<>();
        Batches.few(several.stream().map(Document::id).toList())
                .forEach(ids -> jdbc.query(
                        "select id, kind_rank from document where id in (" + Batches.marks(ids) + ")",
                        row -> {
                            kinds.put(row.getObject("id", UUID.class), DocumentKind.values()[row.getInt("kind_rank")]);
                        },
                        ids.toArray()));
        return kinds;
    }

    void persist(Document document) {
        entities.persist(document);
    }

    void remove(Document document) {
        entities.remove(document);
    }

    void flush() {
        entities.flush();
    }

    /** The last day of the latest sealed year. */
    Optional<LocalDate> sealedUpTo() {
        @Nullable
        LocalDate latest = entities.createQuery(
                        "select max(d.date) from Document d where d.kindRank = :rank", LocalDate.class)
                .setParameter("rank", DocumentKind.YEAR_SEAL.ordinal())
                .getSingleResult();
        return Optional.ofNullable(latest);
    }

    /** All seals, the earliest first. */
    List<DocumentRef> seals() {
        return entities
                .createQuery("select d from Document d where d.kindRank = :rank order by d.date", Document.class)
                .setParameter("rank", DocumentKind.YEAR_SEAL.ordinal())
                .getResultList()
                .stream()
                .map(Document::ref)
                .toList();
    }
}
