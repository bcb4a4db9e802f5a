package patinary.bringing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.ledger.Books;
import patinary.selling.ManySales;
import patinary.shop.CurrentShop;

/** Takes a file in, plans what it would bring, brings it in as one, and takes that back. */
@Service
class Bringing {

    private static final int ROUNDS = 8;

    private final Drafts drafts;
    private final SavedMappings mappings;
    private final Imports imports;
    private final KnownGoods known;
    private final ManySales sales;
    private final Books books;
    private final CurrentShop shop;
    private final MessageSource messages;
    private final TransactionTemplate transaction;

    Bringing(
            Drafts drafts,
            SavedMappings mappings,
            Imports imports,
            KnownGoods known,
            ManySales sales,
            Books books,
            CurrentShop shop,
            MessageSource messages,
            TransactionTemplate transaction) {
        this.drafts = drafts;
        this.mappings = mappings;
        this.imports = imports;
        this.known = known;
        this.sales = sales;
        this.books = books;
        this.shop = shop;
        this.messages = messages;
        this.transaction = transaction;
    }

    /** Keeps a file with what can be told of it, or with the mapping saved for its header row. */
    UUID take(String fileName, byte[] content) {
        Mapping guess = MappingGuess.of(content);
        Sheet sheet = Sheet.read(guess.encoding().text(content), guess.delimiter());
        Mapping mapping = mappings.forHeader(Mapping.key(guess.head(sheet)))
                .map(saved -> saved.mapping().cutAs(guess))
                .orElse(guess);
        return drafts.add(FileName.shown(fileName), content, mapping);
    }

    /** What rows are and what orders they make; asks nothing of the books but what they have. */
    Planner planner(Drafts.Draft draft) {
        UUID channel = draft.mapping().channel();
        Optional<KnownGoods.Place> place =
                known.places().stream().filter(one -> one.id().equals(channel)).findFirst();
        return new Planner(
                draft.id(),
                draft.mapping(),
                shop.currency(),
                place.map(one -> known.orders(one.id())).orElse(Set.of()),
                drafts.choices(draft.id()),
                known.goods(),
                place.filter(KnownGoods.Place::passesTax).isPresent(),
                text -> messages.getMessage("bringing.note.tax-place", new Object[] {text}, shop.locale()));
    }

    /** The plan as the books would take it: tried out by the rules of every sale, and nothing stored. */
    Plan tried(Drafts.Draft draft) {
        Plan plan = planner(draft).plan(draft.sheet());
        for (int round = 0; round < ROUNDS && !plan.sales().isEmpty(); round++) {
            List<ManySales.Fault> faults = sales.tryOut(plan.sales());
            if (faults.isEmpty()) {
                return plan;
            }
            plan = without(plan, faults);
        }
        return plan.sales().isEmpty() ? plan : without(plan, sales.tryOut(plan.sales()));
    }

    /**
     * Brings the new sales of a file in, all of them in one transaction.
     *
     * @param seen the seal of the plan that she saw; where the plan has become another, nothing is brought in
     * @return whether they are in the books
     */
    boolean bringIn(UUID id, String seen) {
        Optional<Drafts.Draft> draft = drafts.find(id);
        if (draft.isEmpty()) {
            return imports.find(id).isPresent();
        }
        Plan plan = tried(draft.get());
        if (plan.sales().isEmpty() || !plan.seal().equals(seen)) {
            return false;
        }
        return Boolean.TRUE.equals(transaction.execute(status -> {
            boolean done = store(draft.get(), plan);
            if (!done) {
                status.setRollbackOnly();
            }
            return done;
        }));
    }

    /** Takes back exactly the sales that came in with an import and are still there, or none of them. */
    List<ManySales.Fault> undo(UUID id) {
        List<UUID> ids = imports.sales(id).stream().map(Imports.Brought::saleId).toList();
        List<ManySales.Fault> faults = transaction.execute(status -> {
            List<ManySales.Fault> found = sales.undo(ids);
            if (found.isEmpty()) {
                imports.undone(id);
            } else {
                status.setRollbackOnly();
            }
            return found;
        });
        return faults == null ? List.of() : faults;
    }

    /** Under the lock of the books the numbers are held against them once more, so that no order comes in from two files. */
    private boolean store(Drafts.Draft draft, Plan plan) {
        books.hold();
        if (!drafts.hold(draft.id())) {
            return imports.find(draft.id()).isPresent();
        }
        UUID channel = plan.sales().get(0).channel();
        Set<String> there = known.orders(channel);
        boolean twice = plan.sales().stream().anyMatch(sale -> there.contains(FileOrder.key(sale.order())));
        if (twice || !sales.record(plan.sales()).isEmpty()) {
            return false;
        }
        imports.add(
                draft.id(),
                draft.fileName(),
                channel,
                plan.sales().stream().map(ManySales.Typed::id).toList());
        drafts.remove(draft.id());
        return true;
    }

    /** A refusal of a document that is not in the file concerns all of the file. */
    private static Plan without(Plan plan, List<ManySales.Fault> faults) {
        Set<UUID> own = plan.sales().stream().map(ManySales.Typed::id).collect(Collectors.toSet());
        boolean ofOthers = faults.stream().noneMatch(fault -> own.contains(fault.sale()));
        Map<UUID, List<ManySales.Fault>> bySale = new HashMap<>();
        for (ManySales.Fault fault : faults) {
            for (UUID sale : ofOthers ? own : Set.of(fault.sale())) {
                bySale.computeIfAbsent(sale, fresh -> new ArrayList<>()).add(fault);
            }
        }
        return plan.without(bySale);
    }
}
