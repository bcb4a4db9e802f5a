package patinary.supplies;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;
import patinary.money.Shares;
import patinary.supplies.BundleShares.Basis;
import patinary.supplies.BundleShares.Known;

class BundleSharesTest {

    private static final UUID JAR = new UUID(0, 1);
    private static final UUID BRUSH = new UUID(0, 2);

    /**
     * Published: KPMG, Revenue, IFRS 15 handbook (2019), 4.2, example 5 (read in a public copy): services at 20, 30 and 40
     * singly, 80 together, are allocated 18, 27 and 35, in whole units as here.
     */
    @Test
    void agreesWithThePublishedBundleOfThree() {
        assertThat(minor(BundleShares.of(Amount.of(80), List.of(known(20L, null), known(30L, null), known(40L, null)))))
                .containsExactly(18L, 27L, 35L);
    }

    /** Worked by hand in docs/handbook/bundles.md: 33.00 over 28.50, 5.00 and 4.50 singly, 38.00 together. */
    @Test
    void sharesByWhatThePartsAreAskedSingly() {
        List<Known> parts = List.of(known(2850L, 1900L), known(500L, 200L), known(450L, null));
        assertThat(BundleShares.basis(parts)).isEqualTo(Basis.ASKED);
        assertThat(minor(BundleShares.of(Amount.of(3300), parts))).containsExactly(2475L, 434L, 391L);
    }

    /** The same where the sheet has no price and cost 1.50: 33.00 over 19.00, 2.00 and 1.50, 22.50 together. */
    @Test
    void sharesByCostWhereOneHasNoPrice() {
        List<Known> parts = List.of(known(2850L, 1900L), known(500L, 200L), known(null, 150L));
        assertThat(BundleShares.basis(parts)).isEqualTo(Basis.COST);
        assertThat(minor(BundleShares.of(Amount.of(3300), parts))).containsExactly(2787L, 293L, 220L);
    }

    @Test
    void sharesEquallyWhereNeitherIsKnownOfEach() {
        List<Known> parts = List.of(known(2850L, null), known(500L, 200L), known(null, 150L));
        assertThat(BundleShares.basis(parts)).isEqualTo(Basis.EQUAL);
        assertThat(minor(BundleShares.of(Amount.of(1000), parts))).containsExactly(334L, 333L, 333L);
    }

    @Test
    void pricesThatAreAllNothingTellNothing() {
        assertThat(BundleShares.basis(List.of(known(0L, 300L), known(0L, 100L))))
                .isEqualTo(Basis.COST);
        assertThat(BundleShares.basis(List.of(known(0L, 0L), known(0L, 0L)))).isEqualTo(Basis.EQUAL);
    }

    @Property
    void sharesAddUpAndSharingThemAgainByThemselvesChangesNothing(
            @ForAll @LongRange(max = 10_000_000) long price,
            @ForAll @Size(min = 1, max = 9) List<@LongRange(max = 1_000_000) Long> asked,
            @ForAll @IntRange(max = 2) int unknown) {
        List<Known> parts = asked.stream()
                .map(one -> known(one % 3 < unknown ? null : one, one % 2 == 0 ? one / 2 : null))
                .toList();
        List<Amount> shares = BundleShares.of(Amount.of(price), parts);
        assertThat(shares.stream().collect(Amount.sum())).isEqualTo(Amount.of(price));
        assertThat(shares).noneMatch(Amount::isNegative);
        assertThat(price == 0 ? shares : Shares.byAmount(Amount.of(price), shares))
                .isEqualTo(shares);
    }

    /** 5 jars of 200 ml and 7 brushes; a set of 2 jars and 1 brush: the jars make 2, the brushes 7. */
    @Test
    void thePartThatRunsOutFirstSaysHowManyTheStockMakes() {
        Bundle.Facts set = new Bundle.Facts(
                "Starter set",
                Amount.of(3300),
                List.of(
                        new Bundle.Part(1, JAR, "2 jar", new BigDecimal("400")),
                        new Bundle.Part(2, BRUSH, "1", BigDecimal.ONE)));
        assertThat(set.makes(Map.of(JAR, new BigDecimal("1000"), BRUSH, BigDecimal.valueOf(7))))
                .isEqualTo(2);
        assertThat(set.makes(Map.of(JAR, new BigDecimal("1200"), BRUSH, BigDecimal.valueOf(2))))
                .isEqualTo(2);
        assertThat(set.makes(Map.of(JAR, new BigDecimal("1200")))).isZero();
        assertThat(set.makes(Map.of(JAR, new BigDecimal("-400"), BRUSH, BigDecimal.TEN)))
                .isZero();
    }

    private static Known known(@Nullable Long asked, @Nullable Long cost) {
        return new Known(
                asked == null ? null : BigDecimal.valueOf(asked), cost == null ? null : BigDecimal.valueOf(cost));
    }

    private static Stream<Long> stream(List<Amount> shares) {
        return shares.stream().map(Amount::minor);
    }

    private static List<Long> minor(List<Amount> shares) {
        return stream(shares).toList();
    }
}
