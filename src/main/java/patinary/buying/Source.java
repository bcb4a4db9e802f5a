package patinary.buying;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Percent;

/** Where things are bought. */
@Entity
@Table(name = "source")
public class Source {

    @Id
    private UUID id = new UUID(0, 0);

    private String name = "";
    private String note = "";
    private String resaleCertificate = "";

    @Column(name = "tax_percent")
    private @Nullable Percent taxPercent;

    @Version
    private long version;

    protected Source() {}

    public Source(UUID id, String name, String note, String resaleCertificate, @Nullable Percent taxPercent) {
        this.id = id;
        rewrite(name, note, resaleCertificate, taxPercent);
    }

    /** Replaces everything but the id. */
    public final void rewrite(
            String newName, String newNote, String newResaleCertificate, @Nullable Percent newTaxPercent) {
        name = newName;
        note = newNote;
        resaleCertificate = newResaleCertificate;
        taxPercent = newTaxPercent;
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

    /** What its till adds as sales tax, or null where she has not said. */
    public @Nullable Percent taxPercent() {
        return taxPercent;
    }

    public long version() {
        return version;
    }
}
