package patinary.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;
import patinary.ledger.Books;
import patinary.ledger.BooksSettings;
import patinary.ledger.StockMethod;
import patinary.money.Amount;
import patinary.testing.ShopTest;

/** A change waits for the turn while another chooses another costing method, at this copy of the program or at another. */
@ShopTest
class CostingMethodIT {

    @Autowired
    private CurrentShop current;

    @Autowired
    private Settings settings;

    @Autowired
    private BooksSettings counting;

    @Autowired
    private Books books;

    @Autowired
    private TransactionTemplate transaction;

    @AfterEach
    void endTheRequest() {
        RequestContextHolder.resetRequestAttributes();
    }

    @Test
    void isTheStoredOneForWhoeverDerivesAndNotTheOneThatTheRequestBeganWith() {
        RequestContextHolder.setRequestAttributes(new ServletRequestAttributes(new MockHttpServletRequest()));
        assertThat(current.costingMethod()).isEqualTo(StockMethod.FIFO);

        CompletableFuture.runAsync(this::chooseAverage).join();

        assertThat(current.costingMethod())
                .as("one page does not mix two states")
                .isEqualTo(StockMethod.FIFO);
        StockMethod derived = transaction.execute(status -> {
            books.hold();
            return counting.stockMethod();
        });
        assertThat(derived).isEqualTo(StockMethod.AVERAGE);
    }

    private void chooseAverage() {
        SettingsForm form = settings.read();
        form.costingMethod = StockMethod.AVERAGE.name();
        settings.change(form, Amount.ZERO);
    }
}
