package patinary.shop;

import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Books;
import patinary.money.PriceEndings;

/** What the owner aims at, read and kept. */
@Service
public class CurrentAims {

    private final AimRows rows;
    private final CurrentShop shop;
    private final Books books;

    CurrentAims(AimRows rows, CurrentShop shop, Books books) {
        this.rows = rows;
        this.shop = shop;
        this.books = books;
    }

    @Transactional(readOnly = true)
    public Aims get() {
        int digits = shop.currency().digits();
        return rows.findById(Shop.ONLY)
                .map(row -> new Aims(
                        row.horizonDays,
                        row.salvage,
                        row.target,
                        row.targetReturn,
                        row.purchaseTax,
                        PriceEndings.parse(row.priceEndings, digits)
                                .orElseGet(() -> Aims.usual(digits).priceEndings())))
                .orElseGet(() -> Aims.usual(digits));
    }

    /** The version of the row a form is drawn from; -1 where there is none yet. */
    @Transactional(readOnly = true)
    public long version() {
        return rows.findById(Shop.ONLY).map(row -> row.version).orElse(-1L);
    }

    /** @throws OptimisticLockingFailureException where the aims changed after the form was drawn */
    @Transactional
    public void keep(Aims aims, long version) {
        books.settingsChange();
        if (version() != version) {
            throw new OptimisticLockingFailureException("The aims changed in between");
        }
        KeptAims row = rows.findById(Shop.ONLY).orElseGet(KeptAims::new);
        row.horizonDays = aims.horizonDays();
        row.salvage = aims.salvage();
        row.target = aims.target();
        row.targetReturn = aims.targetReturn();
        row.purchaseTax = aims.purchaseTax();
        row.priceEndings = aims.priceEndings().toString();
        rows.save(row);
    }
}
