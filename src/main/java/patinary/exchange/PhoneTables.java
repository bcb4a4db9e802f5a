package patinary.exchange;

import static patinary.exchange.TableBuilder.table;

import java.util.List;

/** The receipts of what phones delivered: an entry that arrives again in a shop brought back is not recorded again. */
final class PhoneTables {

    static final List<ArchiveTable> ALL = List.of(table("delivery")
            .key("who", "entry_key")
            .name("who", 60)
            .column("entry_key", Type.ID)
            .name("fingerprint", 64)
            .text("href", 400)
            .text("words", 2000)
            .column("captured_at", Type.MOMENT)
            .optional()
            .column("received_at", Type.MOMENT)
            .done());

    private PhoneTables() {}
}
