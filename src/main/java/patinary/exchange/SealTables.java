package patinary.exchange;

import static patinary.exchange.TableBuilder.table;

import java.util.List;
import java.util.stream.Stream;

/** The file of what was sealed: the only postings that an archive holds, because no document gives them again for certain. */
final class SealTables {

    private static final String[] DOCUMENTS = Stream.of(
                    DocumentTables.ALL, SellingTables.ALL, MoneyTables.ALL, ArrangementTables.ALL)
            .flatMap(List::stream)
            .filter(table -> table.kind() != null)
            .map(ArchiveTable::name)
            .toArray(String[]::new);

    static final List<ArchiveTable> ALL = List.of(table("sealed_posting")
            .key("document_id", "line")
            .ref("year_seal_id", "year_seal")
            .ref("document_id", DOCUMENTS)
            .column("line", Type.WHOLE)
            .zeroOrMore()
            .column("doc_date", Type.DATE)
            .name("account", 20)
            .ref("place_id", "money_place")
            .optional()
            .name("category", 40)
            .optional()
            .ref("piece_id", "piece")
            .optional()
            .ref("supply_id", "supply")
            .optional()
            .ref("party_id", "source")
            .optional()
            .ref("origin_id", DOCUMENTS)
            .optional()
            .column("estimated", Type.YES_NO)
            .amount("amount")
            .decimal("quantity", 16, 14)
            .done());

    private SealTables() {}
}
