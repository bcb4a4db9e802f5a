package patinary.bringing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import patinary.money.Amount;
import patinary.money.ShopCurrency;

/** Whatever the shape of a file, the same sales come out of it, and what is wrong with a row is said of that row. */
class ThirtyFilesTest {

    private static final ShopCurrency DOLLARS = ShopCurrency.ofCode("USD");
    private static final List<Meaning> PLACES = List.of(
            Meaning.ORDER,
            Meaning.DATE,
            Meaning.TITLE,
            Meaning.CODE,
            Meaning.QUANTITY,
            Meaning.PRICE,
            Meaning.SHIPPING,
            Meaning.TOTAL,
            Meaning.BUYER);

    static Stream<ThirtyFiles.OneFile> files() {
        return ThirtyFiles.ALL.stream();
    }

    @Test
    void areThirty() {
        assertThat(ThirtyFiles.ALL)
                .hasSize(30)
                .extracting(ThirtyFiles.OneFile::name)
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("files")
    void areToldByLooking(ThirtyFiles.OneFile file) {
        Mapping guess = MappingGuess.of(file.bytes());
        assertThat(Encoding.guess(file.bytes())).isEqualTo(new Encoding.Guess(file.encoding(), file.sign()));
        assertThat(guess.delimiter()).isEqualTo(file.delimiter());
        assertThat(guess.leadIn()).isEqualTo(file.leadIn());
        assertThat(guess.header()).isEqualTo(file.header());
        assertThat(guess.dates()).isEqualTo(file.dates());
        assertThat(guess.numbers()).isEqualTo(file.numbers());
        if (file.header()) {
            assertThat(guess.columns()).isEqualTo(columns());
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void saySameSales(ThirtyFiles.OneFile file) {
        Mapping guess = MappingGuess.of(file.bytes());
        Mapping mapping = new Mapping(
                guess.encoding(),
                guess.delimiter(),
                guess.leadIn(),
                guess.header(),
                file.then(),
                guess.numbers() == null ? NumberForm.POINT : guess.numbers(),
                false,
                true,
                new UUID(0, 1),
                columns());
        Sheet sheet = Sheet.read(mapping.encoding().text(file.bytes()), mapping.delimiter());
        List<FileOrder> orders = FileOrders.read(sheet, mapping, DOLLARS, Set.of());
        assertThat(orders.stream().flatMap(order -> order.sold().stream()).map(ThirtyFilesTest::said))
                .containsExactlyElementsOf(Shape.SAID);
        assertThat(orders.stream()
                        .flatMap(order -> order.faults().stream())
                        .map(fault -> fault.line() + " " + fault.key().replace("bringing.fault.", "")))
                .containsExactlyElementsOf(file.faults());
    }

    private static Map<Meaning, Integer> columns() {
        Map<Meaning, Integer> columns = new EnumMap<>(Meaning.class);
        PLACES.forEach(meaning -> columns.put(meaning, PLACES.indexOf(meaning)));
        return columns;
    }

    private static String said(Sold sold) {
        return String.join(
                " ",
                sold.reference(),
                String.valueOf(sold.date()),
                sold.title() + "/" + sold.code(),
                sold.quantity().toPlainString(),
                String.valueOf(sold.gross().minor()),
                minor(sold, Meaning.SHIPPING),
                minor(sold, Meaning.TOTAL),
                sold.buyer());
    }

    private static String minor(Sold sold, Meaning meaning) {
        Amount amount = sold.ofOrder().get(meaning);
        return amount == null ? "-" : String.valueOf(amount.minor());
    }
}
