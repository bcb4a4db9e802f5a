package patinary.selling;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** One of her own ways of packing, by name: a small parcel is a box, three sheets of tissue and a metre of tape. */
@Entity
@Table(name = "parcel")
class Parcel {

    @Id
    private UUID id = new UUID(0, 0);

    private String name = "";

    @ElementCollection
    @CollectionTable(name = "parcel_wrap", joinColumns = @JoinColumn(name = "parcel_id"))
    @OrderBy("line")
    private List<ParcelWrap> wraps = new ArrayList<>();

    @Version
    private long version;

    protected Parcel() {}

    Parcel(UUID id, String name, List<ParcelWrap> wraps) {
        this.id = id;
        rewrite(name, wraps);
    }

    final void rewrite(String newName, List<ParcelWrap> newWraps) {
        name = newName;
        List<ParcelWrap> copy = List.copyOf(newWraps);
        wraps.clear();
        wraps.addAll(copy);
    }

    UUID id() {
        return id;
    }

    String name() {
        return name;
    }

    List<ParcelWrap> wraps() {
        return List.copyOf(wraps);
    }

    long version() {
        return version;
    }
}
