package patinary.ledger;

import jakarta.persistence.Column;
import jakarta.persistence.DiscriminatorColumn;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Inheritance;
import jakarta.persistence.InheritanceType;
import jakarta.persistence.PostLoad;
import jakarta.persistence.PostPersist;
import jakarta.persistence.PostUpdate;
import jakarta.persistence.Table;
import jakarta.persistence.Transient;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A fact: something that happened on a day. Each kind extends this in its own feature and says, purely, what it does to
 * the books. Only {@link Books} stores documents, because storing one re-derives the postings that depend on it.
 */
@Entity
@Table(name = "document")
@Inheritance(strategy = InheritanceType.JOINED)
@DiscriminatorColumn(name = "kind", length = 20)
public abstract class Document {

    @Id
    private UUID id = new UUID(0, 0);

    @Column(name = "doc_date")
    private LocalDate date = LocalDate.EPOCH;

    private int kindRank;
    private String note = "";
    private Instant recordedAt = Instant.EPOCH;

    @Version
    private long version;

    @Transient
    private @Nullable LocalDate storedDate;

    protected Document() {}

    protected Document(UUID id, DocumentKind kind, LocalDate date, String note) {
        this.id = id;
        this.kindRank = kind.ordinal();
        this.date = date;
        this.note = note;
    }

    /** What this document does to the books; depends on nothing but the document. */
    public abstract List<Move> moves();

    public DocumentRef ref() {
        return new DocumentRef(id, kind(), date);
    }

    public UUID id() {
        return id;
    }

    public DocumentKind kind() {
        return DocumentKind.values()[kindRank];
    }

    public LocalDate date() {
        return date;
    }

    public String note() {
        return note;
    }

    public long version() {
        return version;
    }

    public Instant recordedAt() {
        return recordedAt;
    }

    protected void redate(LocalDate newDate, String newNote) {
        date = newDate;
        note = newNote;
    }

    /** Replaces the rows of one of a document's lists; the copy guards against a list replacing itself. */
    protected static <T> void replace(List<T> rows, List<T> by) {
        List<T> copy = List.copyOf(by);
        rows.clear();
        rows.addAll(copy);
    }

    void recorded(Instant at) {
        recordedAt = at;
    }

    /** The date under which the database knows this document, however it was changed since. */
    @Nullable
    LocalDate storedDate() {
        return storedDate;
    }

    @PostLoad
    @PostPersist
    @PostUpdate
    void rememberStoredDate() {
        storedDate = date;
    }
}
