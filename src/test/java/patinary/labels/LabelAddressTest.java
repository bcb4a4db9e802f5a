package patinary.labels;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Codes in the path of an address as RFC 3986 has it; those that no path carries safely go into the query. */
class LabelAddressTest {

    @ParameterizedTest
    @CsvSource({
        "P0012, https://shop.example/p/P0012",
        "blue 7, https://shop.example/p/blue%207",
        "Ä1, https://shop.example/p/%C3%841",
        "a/b, https://shop.example/p?code=a%2Fb",
        "7#1, https://shop.example/p?code=7%231"
    })
    void leadsToThePieceWhateverItsCode(String code, String scanned) {
        assertThat(LabelAddress.scanned("https://shop.example", code)).isEqualTo(scanned);
    }

    @ParameterizedTest
    @CsvSource({"P0012", "a/b"})
    void withoutAnAddressTheSquareHoldsTheCode(String code) {
        assertThat(LabelAddress.scanned("", code)).isEqualTo(code);
    }
}
