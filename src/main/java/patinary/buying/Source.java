package patinary.buying;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.UUID;

/** Where things are bought. */
@Entity
@Table(name = "source")
public class Source {

    @Id
    private UUID id = new UUID(0, 0);

    private String name = "";
    private String note = "";
    private String resaleCertificate = "";

    @Version
    private long version;

    protected Source() {}

    public Source(UUID id, String name, String note, String resaleCertificate) {
        this.id = id;
        rewrite(name, note, resaleCertificate);
    }

    /** Replaces everything but the id. */
    public final void rewrite(String newName, String newNote, String newResaleCertificate) {
        name = newName;
        note = newNote;
        resaleCertificate = newResaleCertificate;
    }

    public UUID id() {
        return id;
    }

    public String name() {
        return name;
    }

    public String note() {
        return note;
    }

    /** The number under which this source sells to her without sales tax, or empty. */
    public String resaleCertificate() {
        return resaleCertificate;
    }

    public long version() {
        return version;
    }
}
