package patinary.whole;

import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicInteger;

/** What the program has answered as stored, and what was sent without an answer; outlives every death of the program. */
final class Told {

    /** An entry of a phone, kept there until it has its receipt. The picture is empty where none goes with it. */
    record Entry(UUID key, String path, Map<String, String> answers, byte[] picture) {}

    /** Documents that were answered as stored. */
    final Map<UUID, String> documents = new ConcurrentHashMap<>();

    /** The receipts of entries by their keys. */
    final Map<UUID, String> receipts = new ConcurrentHashMap<>();

    /** Entries that have their receipt, to be sent again now and then. */
    final Queue<Entry> delivered = new ConcurrentLinkedQueue<>();

    /** Entries that nobody answered. */
    final Queue<Entry> waiting = new ConcurrentLinkedQueue<>();

    final Map<UUID, String> photos = new ConcurrentHashMap<>();

    /** Files of sales that were answered as brought in, with how many sales. */
    final Map<UUID, Integer> imports = new ConcurrentHashMap<>();

    /** Pieces that may be sold, by their codes. */
    final Queue<String> pieces = new ConcurrentLinkedQueue<>();

    final AtomicInteger number = new AtomicInteger();
    final AtomicInteger unanswered = new AtomicInteger();
    final AtomicInteger repeated = new AtomicInteger();
    /** Answers that something was not stored now: busy, under way, failed. A program that dies gives them, and one of several that share a store. */
    final Queue<Integer> notNow = new ConcurrentLinkedQueue<>();

    /** What should not have been answered. */
    final Queue<String> wrong = new ConcurrentLinkedQueue<>();

    /** Why each stopped working. */
    final Queue<String> ends = new ConcurrentLinkedQueue<>();

    int answered() {
        return documents.size() + photos.size() + imports.size();
    }

    /** Something said of it in one line. */
    String counts() {
        return "%d documents, %d entries, %d photos, %d imports answered; %d requests without an answer, %d entries sent again"
                .formatted(
                        documents.size(),
                        receipts.size(),
                        photos.size(),
                        imports.size(),
                        unanswered.get(),
                        repeated.get());
    }

    List<String> wrong() {
        return List.copyOf(wrong);
    }
}
