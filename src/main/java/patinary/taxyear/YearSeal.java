package patinary.taxyear;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.DiscriminatorValue;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import patinary.ledger.Document;
import patinary.ledger.DocumentKind;
import patinary.ledger.Move;

/** Closes a year: nothing dated up to its date changes any more. */
@Entity
@Table(name = "year_seal")
@DiscriminatorValue("YEAR_SEAL")
public class YearSeal extends Document {

    private int taxYear;

    private String postingsHash = "";

    private int calculationVersion;

    @ElementCollection
    @CollectionTable(name = "year_seal_open", joinColumns = @JoinColumn(name = "year_seal_id"))
    @OrderBy("item")
    private List<OpenItem> open = new ArrayList<>();

    protected YearSeal() {}

    public YearSeal(UUID id, LocalDate date, String note, int taxYear, String postingsHash, int calculationVersion) {
        super(id, DocumentKind.YEAR_SEAL, date, note);
        this.taxYear = taxYear;
        this.postingsHash = postingsHash;
        this.calculationVersion = calculationVersion;
    }

    /** Replaces everything but the id. */
    public void rewrite(LocalDate date, String note, int taxYear, String postingsHash, int calculationVersion) {
        redate(date, note);
        this.taxYear = taxYear;
        this.postingsHash = postingsHash;
        this.calculationVersion = calculationVersion;
    }

    /** Notes what was open when the year was sealed. */
    public void leaves(List<OpenItem> items) {
        replace(open, items);
    }

    @Override
    public List<Move> moves() {
        return List.of();
    }

    public int taxYear() {
        return taxYear;
    }

    public String postingsHash() {
        return postingsHash;
    }

    /** What was open when the year was sealed. */
    public List<OpenItem> open() {
        return List.copyOf(open);
    }

    public int calculationVersion() {
        return calculationVersion;
    }
}
