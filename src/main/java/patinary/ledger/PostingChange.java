package patinary.ledger;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/**
 * What must be written so that stored postings are the derived ones: nothing where a document's postings are the same.
 *
 * @param stale documents whose stored postings go
 * @param fresh postings that come, by document
 */
record PostingChange(List<UUID> stale, List<List<Entry>> fresh) {

    /** Every document whose postings are others now. */
    Set<UUID> documents() {
        Set<UUID> documents = new HashSet<>(stale);
        // A document that posts nothing any more is among the stale ones.
        fresh.stream()
                .filter(entries -> !entries.isEmpty())
                .forEach(entries -> documents.add(entries.get(0).document().id()));
        return documents;
    }

    static PostingChange between(Map<UUID, List<Entry>> stored, Map<UUID, List<Entry>> derived) {
        return new PostingChange(
                stored.entrySet().stream()
                        .filter(entry -> !entry.getValue().equals(derived.get(entry.getKey())))
                        .map(Map.Entry::getKey)
                        .toList(),
                derived.entrySet().stream()
                        .filter(entry -> !entry.getValue().equals(stored.get(entry.getKey())))
                        .map(Map.Entry::getValue)
                        .toList());
    }
}
