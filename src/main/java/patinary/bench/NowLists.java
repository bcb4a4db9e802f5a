package patinary.bench;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.stereotype.Component;
import patinary.bench.NowRows.FinishRow;
import patinary.bench.NowRows.PieceRow;
import patinary.bench.NowRows.SupplyRow;
import patinary.bench.NowRows.WordsRow;
import patinary.phone.PhoneLists;
import patinary.supplies.SupplyCatalog;

/** What the bench page needs on a phone without reception. */
@Component
class NowLists implements PhoneLists {

    /** More than a bench holds; a shop of thousands must still fit into a phone. */
    private static final int PIECES = 200;

    private final SupplyCatalog catalog;
    private final NowChoices choices;
    private final NowPast past;
    private final BenchFinishes finishes;
    private final MishapBook mishaps;

    NowLists(SupplyCatalog catalog, NowChoices choices, NowPast past, BenchFinishes finishes, MishapBook mishaps) {
        this.catalog = catalog;
        this.choices = choices;
        this.past = past;
        this.finishes = finishes;
        this.mishaps = mishaps;
    }

    @Override
    public Map<String, ?> all() {
        List<PieceRow> pieces = choices.pieces("", List.of(), PIECES);
        List<SupplyCatalog.Known> known = catalog.all();
        NowPast.Past earlier = past.read();
        NowPast.Entries said = earlier.entries();
        List<SupplyRow> supplies = choices.supplies(known, said.lastUsed());
        List<WordsRow> phrases = choices.phrases(said.phrases());
        List<FinishRow> followed = finishes.rows();
        // The texts of the cautions that a tap may call up.
        Set<String> called = new LinkedHashSet<>();
        pieces.forEach(row -> called.addAll(row.cautions()));
        supplies.forEach(row -> called.addAll(row.cautions()));
        phrases.forEach(row -> called.addAll(row.cautions()));
        followed.forEach(row -> called.addAll(row.cautions()));
        return Map.of(
                "bench-pieces",
                pieces,
                "bench-supplies",
                supplies,
                "phrases",
                phrases,
                "bench-finishes",
                followed,
                "bench-cautions",
                choices.cautions(called),
                "bench-styles",
                earlier.styles(),
                "bench-surfaces",
                words(said.surfaces()),
                "bench-mishaps",
                words(said.mishaps()),
                // What failed before, and the pieces and supplies with which it could fail again.
                "bench-failed",
                mishaps.couldFailAgain(
                        known, pieces.stream().map(PieceRow::value).toList()));
    }

    private static List<WordsRow> words(List<String> texts) {
        return texts.stream().map(text -> new WordsRow(text, List.of())).toList();
    }
}
