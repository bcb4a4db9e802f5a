package patinary.buyers;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.springframework.stereotype.Component;
import patinary.exchange.Content;
import patinary.history.Erasure;

/** Erases a buyer from what the history kept of documents, of those too that are there no more. */
@Component
class KeptNames {

    /** Documents that follow a sale and may say who bought. */
    private static final Set<String> FOLLOW = Set.of("payment", "refund", "postage");

    private static final int FILE_NAME = 200;

    private final Erasure history;

    KeptNames(Erasure history) {
        this.history = history;
    }

    /**
     * Writes something else wherever a name stands, and empties on the papers of that buyer what is emptied in the shop.
     *
     * @param there the papers of that buyer that are in the shop; those that were removed are found here
     */
    void replace(String name, String by, Set<UUID> there, Erasing.Also also) {
        Set<UUID> papers = papers(name);
        papers.addAll(there);
        NameInText written = new NameInText(name);
        history.rewrite(new Erasure.Rewriting() {
            @Override
            public Content content(String kind, UUID subject, Content content) {
                boolean paper = papers.contains(subject);
                return content.with((table, column, text) -> paper && isEmptied(table, column, also)
                        ? ""
                        : column.equals("buyer") && text.equalsIgnoreCase(name) ? by : written.replaced(text, by));
            }

            @Override
            public String text(String text) {
                String replaced = written.replaced(text, by);
                return replaced.length() <= FILE_NAME ? replaced : replaced.substring(0, FILE_NAME);
            }
        });
    }

    /** Empties where the given sales went, and their tracking numbers. */
    void emptyAddresses(Set<UUID> sales) {
        history.rewrite(new Erasure.Rewriting() {
            @Override
            public Content content(String kind, UUID subject, Content content) {
                return sales.contains(subject)
                        ? content.with((table, column, text) -> isAddress(table, column) ? "" : text)
                        : content;
            }

            @Override
            public String text(String text) {
                return text;
            }
        });
    }

    private Set<UUID> papers(String name) {
        Set<UUID> papers = new HashSet<>();
        history.look((kind, subject, content) -> content.rows(kind).stream()
                .filter(row -> row.getOrDefault("buyer", "").equalsIgnoreCase(name))
                .forEach(row -> papers.add(subject)));
        Set<String> sales = new HashSet<>();
        papers.forEach(paper -> sales.add(paper.toString()));
        history.look((kind, subject, content) -> {
            if (FOLLOW.contains(kind) && sales.contains(content.cell(kind, "sale_id"))) {
                papers.add(subject);
            }
        });
        return papers;
    }

    private static boolean isEmptied(String table, String column, Erasing.Also also) {
        return isAddress(table, column)
                || also.notes()
                        && Map.of("mail_loss", "words")
                                .getOrDefault(table, "note")
                                .equals(column)
                || also.orders()
                        && (column.equals("order_reference")
                                || table.equals("mail_loss") && column.equals("reference"));
    }

    private static boolean isAddress(String table, String column) {
        return table.equals("sending") && (column.equals("destination") || column.equals("tracking"));
    }
}
