package patinary.supplies;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.ledger.DocumentKind;

/** Where the documents that move a supply are shown. */
final class DocumentPaths {

    private DocumentPaths() {}

    static @Nullable String of(DocumentKind kind, UUID id) {
        return switch (kind) {
            case RECEIPT -> "/receipts/" + id;
            case BENCH_ENTRY -> "/bench/" + id;
            case COUNT -> "/supplies/counts/" + id;
            case TAKING -> "/supplies/takings/" + id;
            case SALE -> "/sales/" + id;
            case SUPPLY_GIFT -> "/arrangements/received";
            default -> null;
        };
    }
}
