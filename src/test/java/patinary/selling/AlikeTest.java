package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;

/** Pieces that are put up together, as alike or as a set that is taken apart. The figures are worked by hand. */
class AlikeTest {

    private static final LocalDate DAY = LocalDate.of(2025, 3, 1);
    private static final UUID FORM = new UUID(7, 7);

    @Test
    void everyPieceGetsAnOfferOfItsOwnAndTheyKnowEachOther() {
        List<Alike.One> offers = Alike.apart(FORM, offer(2400, 1, 1, 1), null);
        assertThat(offers).hasSize(3);
        assertThat(offers).extracting(Alike.One::id).doesNotHaveDuplicates().startsWith(FORM);
        assertThat(offers).allSatisfy(one -> {
            assertThat(one.content().alikeId()).isEqualTo(FORM);
            assertThat(one.content().title()).isEqualTo("Bauble");
            assertThat(one.content().lastPrice()).isEqualTo(Amount.of(2400));
        });
        assertThat(offers)
                .flatExtracting(one -> one.content().pieces())
                .extracting(Offer.OfferedPiece::pieceId)
                .containsExactly(piece(1), piece(2), piece(3));
    }

    @Test
    void theSameFormMakesTheSameOffers() {
        assertThat(Alike.apart(FORM, offer(2400, 1, 1), null)).isEqualTo(Alike.apart(FORM, offer(2400, 1, 1), null));
    }

    @Test
    void onePieceAloneIsLikeNothingUnlessItJoinsAGroup() {
        assertThat(Alike.apart(FORM, offer(2400, 1), null))
                .extracting(one -> one.content().alikeId())
                .containsOnlyNulls();
        UUID group = new UUID(9, 9);
        assertThat(Alike.apart(FORM, offer(2400, 1), group))
                .extracting(one -> one.content().alikeId())
                .containsExactly(group);
    }

    /** 48.00 by 3 to 1 is 36.00 and 12.00; 10.00 by thirds is 3.34, 3.33, 3.33: the largest remainder, ties to the first. */
    @Test
    void thePartsOfASetThatIsTakenApartAddUpToIt() {
        assertThat(SetSplit.shares(offer(4800, 3, 1)).values()).containsExactly(Amount.of(3600), Amount.of(1200));
        assertThat(SetSplit.shares(offer(1000, 1, 1, 1)).values())
                .containsExactly(Amount.of(334), Amount.of(333), Amount.of(333));
    }

    @Test
    void noPieceIsOnTwoOffersOfOneDay() {
        Offer.Content set = offer(4800, 3, 1);
        assertThat(SetSplit.lastDay(set, DAY.plusDays(4))).isEqualTo(DAY.plusDays(3));
        assertThat(SetSplit.lastDay(set, DAY))
                .as("it was on offer on its first day")
                .isEqualTo(DAY);
        assertThat(SetSplit.alone(set, DAY.plusDays(4), List.of(new SetSplit.Part(piece(2), "Jug", Amount.of(1500)))))
                .singleElement()
                .satisfies(alone -> {
                    assertThat(alone.date()).isEqualTo(DAY.plusDays(4));
                    assertThat(alone.channels()).isEqualTo(set.channels());
                    assertThat(alone.lastPrice()).isEqualTo(Amount.of(1500));
                });
    }

    private static UUID piece(long number) {
        return new UUID(1, number);
    }

    private static Offer.Content offer(long price, long... weights) {
        return new Offer.Content(
                DAY,
                "",
                "Bauble",
                null,
                null,
                LongStream.rangeClosed(1, weights.length)
                        .mapToObj(i -> new Offer.OfferedPiece(piece(i), BigDecimal.valueOf(weights[(int) i - 1])))
                        .toList(),
                List.of(new UUID(2, 2)),
                List.of(new Offer.Price(DAY, Amount.of(price))),
                List.of());
    }
}
