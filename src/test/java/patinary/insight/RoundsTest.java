package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import patinary.survival.Exit;
import patinary.survival.Stay;

/** Invented pieces, every number of days counted on a calendar by hand. */
class RoundsTest {

    private static final LocalDate TODAY = LocalDate.of(2025, 6, 30);
    private static final UUID BOX = new UUID(0, 1);
    private static final UUID TRAY = new UUID(0, 2);
    private static final UUID OFFER = new UUID(1, 1);
    private static final UUID LATER = new UUID(1, 2);

    @Test
    void aSaleEndsARoundAndAPauseStopsItsClock() {
        OfferFacts facts = facts(
                List.of(spell(BOX, OFFER, "2025-05-01", "2025-05-21")),
                Map.of(OFFER, List.of(span("2025-05-05", "2025-05-08"))),
                List.of(sold(BOX, "2025-05-21", false)));

        assertThat(Rounds.of(facts, Map.of(), TODAY))
                .containsExactly(new Round(BOX, OFFER, null, day("2025-05-01"), Stay.of(17, Exit.SOLD), "Stall"));
    }

    @Test
    void whatStillStandsIsOpenWithItsAge() {
        OfferFacts facts = facts(List.of(spell(BOX, OFFER, "2025-06-20", null)), Map.of(), List.of());

        assertThat(Rounds.of(facts, Map.of(), TODAY)).extracting(Round::stay).containsExactly(Stay.of(10, Exit.OPEN));
    }

    @Test
    void whatIsOffOfferIsWithdrawnAndItsClockGoesOnWhenOfferedAgain() {
        OfferFacts.Spell first = spell(BOX, OFFER, "2025-04-01", "2025-04-11");

        assertThat(Rounds.of(facts(List.of(first), Map.of(), List.of()), Map.of(), TODAY))
                .extracting(Round::stay)
                .containsExactly(Stay.of(10, Exit.WITHDRAWN));
        OfferFacts again = facts(List.of(first, spell(BOX, LATER, "2025-06-25", null)), Map.of(), List.of());
        assertThat(Rounds.of(again, Map.of(), TODAY)).extracting(Round::stay).containsExactly(Stay.of(15, Exit.OPEN));
    }

    @Test
    void aSaleThatCameBackIsNotKnownAndBeginsANewRound() {
        OfferFacts facts = facts(
                List.of(spell(BOX, OFFER, "2025-04-01", "2025-04-05"), spell(BOX, LATER, "2025-05-01", "2025-05-03")),
                Map.of(),
                List.of(sold(BOX, "2025-04-05", true), sold(BOX, "2025-05-03", false)));

        assertThat(Rounds.of(facts, Map.of(), TODAY))
                .extracting(Round::stay)
                .containsExactly(Stay.of(4, Exit.OPEN), Stay.of(2, Exit.SOLD));
    }

    @Test
    void whatWasOnOfferBeforeTheBooksIsWatchedFromTheAgeItHad() {
        OfferFacts facts = facts(List.of(spell(BOX, OFFER, "2025-05-22", null)), Map.of(), List.of());

        assertThat(Rounds.of(facts, Map.of(BOX, day("2025-06-01")), TODAY))
                .extracting(Round::stay)
                .containsExactly(new Stay(10, 39, Exit.OPEN));
    }

    @Test
    void aSetIsOneEventAndASaleWithoutAnOfferTellsNothing() {
        OfferFacts facts = facts(
                List.of(spell(BOX, OFFER, "2025-05-01", "2025-05-04"), spell(TRAY, OFFER, "2025-05-01", "2025-05-04")),
                Map.of(),
                List.of(
                        sold(BOX, "2025-05-04", false),
                        sold(TRAY, "2025-05-04", false),
                        sold(new UUID(0, 3), "2025-05-05", false)));

        List<Round> rounds = Rounds.of(facts, Map.of(), TODAY);
        assertThat(rounds)
                .hasSize(2)
                .allSatisfy(round -> assertThat(round.set()).isEqualTo(OFFER));
        assertThat(Speed.stays(rounds)).containsExactly(Stay.of(3, Exit.SOLD));
    }

    private static OfferFacts facts(
            List<OfferFacts.Spell> spells, Map<UUID, List<Span>> pauses, List<OfferFacts.Sold> sold) {
        return new OfferFacts(spells, pauses, sold);
    }

    private static OfferFacts.Spell spell(UUID piece, UUID offer, String from, @Nullable String until) {
        return new OfferFacts.Spell(piece, offer, span(from, until));
    }

    private static OfferFacts.Sold sold(UUID piece, String on, boolean cameBack) {
        return new OfferFacts.Sold(piece, day(on), "Stall", cameBack, 0, 0, 0);
    }

    private static Span span(String from, @Nullable String until) {
        return new Span(day(from), until == null ? null : day(until));
    }

    private static LocalDate day(String text) {
        return LocalDate.parse(text);
    }
}
