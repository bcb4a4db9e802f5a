package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.persistence.ElementCollection;
import jakarta.persistence.EntityManager;
import jakarta.persistence.OrderBy;
import java.lang.reflect.Field;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.invented.InventedShop;
import patinary.testing.ShopTest;

/** A document that is read whole is the one that is found, list by list. */
@ShopTest
class WholeDocumentIT {

    @TempDir
    private Path folder;

    @Autowired
    private ShopArchive archive;

    @Autowired
    private Books books;

    @Autowired
    private EntityManager entities;

    @Autowired
    private TransactionTemplate transaction;

    @Test
    void isTheOneThatIsFound() throws Exception {
        Path zip = folder.resolve("invented.zip");
        new InventedShop(5, 40).write(zip);
        archive.load(zip, Progress.SILENT);
        List<? extends Document> all = transaction.execute(status ->
                entities.createQuery("select d from Document d", Document.class).getResultList());
        assertThat(all.stream().map(Document::kind).distinct().count()).isGreaterThan(10);
        transaction.executeWithoutResult(status -> all.forEach(this::compare));
    }

    private void compare(Document one) {
        Document found = books.find(one.getClass(), one.id()).orElseThrow();
        Document read = books.read(one.getClass(), one.id()).orElseThrow();
        assertThat(read).isNotSameAs(found);
        assertThat(read.ref()).isEqualTo(found.ref());
        assertThat(read.version()).isEqualTo(found.version());
        assertThat(read.storedDate()).isEqualTo(found.storedDate());
        Arrays.stream(one.getClass().getDeclaredFields())
                .filter(field -> field.isAnnotationPresent(ElementCollection.class))
                .forEach(list -> compare(list, read, found));
        assertThat(read.moves()).hasSameElementsAs(found.moves());
    }

    private static void compare(Field list, Document read, Document found) {
        list.setAccessible(true);
        List<?> rows = rows(list, read);
        assertThat(rows).as("%s of %s", list, found.ref()).hasSameSizeAs(rows(list, found));
        if (list.isAnnotationPresent(OrderBy.class)) {
            assertThat(List.<Object>copyOf(rows)).isEqualTo(List.copyOf(rows(list, found)));
        } else {
            assertThat(List.<Object>copyOf(rows)).containsExactlyInAnyOrderElementsOf(rows(list, found));
        }
    }

    private static List<?> rows(Field list, Document of) {
        try {
            return (List<?>) list.get(of);
        } catch (IllegalAccessException opened) {
            throw new IllegalStateException(opened);
        }
    }
}
