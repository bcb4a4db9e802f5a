package patinary.bench;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.DiscriminatorValue;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.ledger.Document;
import patinary.ledger.DocumentKind;
import patinary.ledger.Move;

/** One stretch of work at the bench. */
@Entity
@Table(name = "bench_entry")
@DiscriminatorValue("BENCH_ENTRY")
public class BenchEntry extends Document {

    private int minutes;
    private String done = "";
    private @Nullable UUID finishId;

    @ElementCollection
    @CollectionTable(name = "bench_piece", joinColumns = @JoinColumn(name = "bench_entry_id"))
    private List<BenchPiece> pieces = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "bench_use", joinColumns = @JoinColumn(name = "bench_entry_id"))
    @OrderBy("line")
    private List<SupplyUse> uses = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "bench_use_piece", joinColumns = @JoinColumn(name = "bench_entry_id"))
    private List<UsePiece> usePieces = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "bench_mishap", joinColumns = @JoinColumn(name = "bench_entry_id"))
    @OrderBy("line")
    private List<Mishap> mishaps = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "bench_cut", joinColumns = @JoinColumn(name = "bench_entry_id"))
    @OrderBy("line")
    private List<SheetCut> cuts = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "bench_pot", joinColumns = @JoinColumn(name = "bench_entry_id"))
    @OrderBy("number")
    private List<Pot> pots = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "bench_pot_piece", joinColumns = @JoinColumn(name = "bench_entry_id"))
    private List<PotPiece> potPieces = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "bench_pot_use", joinColumns = @JoinColumn(name = "bench_entry_id"))
    @OrderBy("line")
    private List<PotUse> potUses = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "bench_use_pot", joinColumns = @JoinColumn(name = "bench_entry_id"))
    private List<UsePot> usePots = new ArrayList<>();

    protected BenchEntry() {}

    public BenchEntry(UUID id, BenchContent content) {
        super(id, DocumentKind.BENCH_ENTRY, content.date(), content.note());
        fill(content);
    }

    /** Replaces everything but the id. */
    void rewrite(BenchContent content) {
        redate(content.date(), content.note());
        fill(content);
    }

    @Override
    public List<Move> moves() {
        return BenchPosting.moves(content());
    }

    public BenchContent content() {
        return new BenchContent(
                date(),
                note(),
                minutes,
                done,
                List.copyOf(pieces),
                List.copyOf(uses),
                List.copyOf(usePieces),
                List.copyOf(mishaps),
                new Handling(
                        List.copyOf(cuts),
                        List.copyOf(pots),
                        List.copyOf(potPieces),
                        List.copyOf(potUses),
                        List.copyOf(usePots)),
                finishId);
    }

    private void fill(BenchContent content) {
        minutes = content.minutes();
        done = content.done();
        finishId = content.finishId();
        replace(pieces, content.pieces());
        replace(uses, content.uses());
        replace(usePieces, content.usePieces());
        replace(mishaps, content.mishaps());
        replace(cuts, content.handling().cuts());
        replace(pots, content.handling().pots());
        replace(potPieces, content.handling().potPieces());
        replace(potUses, content.handling().potUses());
        replace(usePots, content.handling().usePots());
    }
}
