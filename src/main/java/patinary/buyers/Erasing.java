package patinary.buyers;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Books;

/**
 * Erases who bought, and nothing else. No posting names a buyer, so none is touched: not even in a sealed year, whose
 * fingerprint stays the same. That is why this may change words of documents there; the books derive everything anew
 * afterwards and would refuse a single cent that differs. docs/handbook/buyers.md.
 */
@Service
@Transactional
class Erasing {

    static final String OWNER = "OWNER";

    /** What goes beside the name, the address and the tracking number. */
    record Also(boolean notes, boolean orders) {}

    private static final String SALES = "select id from sale where lower(buyer) = :name";

    /** What was written about those sales: the sales themselves and the documents that follow them. */
    private static final String PAPERS = "(" + SALES
            + " union all select id from payment where lower(buyer) = :name"
            + " union all select id from payment where sale_id in (" + SALES + ")"
            + " union all select id from refund where sale_id in (" + SALES + ")"
            + " union all select id from postage where sale_id in (" + SALES + "))";

    private static final String NAMELESS = "select s.id from sale s join document d on d.id = s.id"
            + " where s.buyer = '' and d.doc_date < :before and s.posted_on is not null";

    private final JdbcClient jdbc;
    private final Buyers buyers;
    private final LongTexts texts;
    private final KeptNames kept;
    private final Drafts drafts;
    private final Books books;

    Erasing(JdbcClient jdbc, Buyers buyers, LongTexts texts, KeptNames kept, Drafts drafts, Books books) {
        this.jdbc = jdbc;
        this.buyers = buyers;
        this.texts = texts;
        this.kept = kept;
        this.drafts = drafts;
        this.books = books;
    }

    /** @throws AccessDeniedException where it is somebody else: what is erased cannot be brought back */
    static void onlyOwner(boolean owner) {
        if (!owner) {
            throw new AccessDeniedException("Only the owner erases buyers");
        }
    }

    /** Erases several names, each by a word with a number of its own; files that wait and name one of them are thrown away. */
    void erase(List<String> names, Also also) {
        books.hold();
        names.forEach(name -> erase(name, also));
        books.rederive();
    }

    /** Erases the addresses and tracking numbers of sales without a name that were made before a day. */
    void eraseNameless(LocalDate before) {
        books.hold();
        Set<UUID> sales =
                jdbc.sql(NAMELESS).param("before", before).query(UUID.class).set();
        jdbc.sql("update sending set destination = '', tracking = '', version = version + 1 where sale_id in ("
                        + NAMELESS + ")")
                .param("before", before)
                .update();
        if (!sales.isEmpty()) {
            kept.emptyAddresses(sales);
        }
    }

    private void erase(String name, Also also) {
        NameInText written = new NameInText(name);
        String word = ErasedName.next(buyers.names());
        List<UUID> waiting = drafts.naming(written);
        drafts.throwAway(waiting);
        Set<UUID> papers = jdbc.sql("select id from document where id in " + PAPERS)
                .param("name", name.toLowerCase(Locale.ROOT))
                .query(UUID.class)
                .set();
        // An edit that somebody has open would put the name back: it is stale from now on.
        update("update document set version = version + 1 where id in " + PAPERS, name);
        if (also.notes()) {
            update("update document set note = '' where id in " + PAPERS, name);
            update("update mail_loss set words = '' where sale_id in (" + SALES + ")", name);
        }
        if (also.orders()) {
            update("update mail_loss set reference = '' where sale_id in (" + SALES + ")", name);
        }
        update(
                "update sending set destination = '', tracking = '', version = version + 1 where sale_id in (" + SALES
                        + ")",
                name);
        if (also.orders()) {
            update("update sale set order_reference = '' where lower(buyer) = :name", name);
        }
        rename("sale", name, word);
        rename("payment", name, word);
        texts.replace(written, word);
        kept.replace(name, word, papers, also);
    }

    private void rename(String table, String name, String word) {
        jdbc.sql("update " + table + " set buyer = :word where lower(buyer) = :name")
                .param("word", word)
                .param("name", name.toLowerCase(Locale.ROOT))
                .update();
    }

    private void update(String sql, String name) {
        jdbc.sql(sql).param("name", name.toLowerCase(Locale.ROOT)).update();
    }
}
