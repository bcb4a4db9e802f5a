package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.insight.MoveFacts.Group;
import patinary.insight.OfferFacts.Sold;
import patinary.insight.OfferFacts.Spell;
import patinary.money.Amount;
import patinary.money.Percent;

/** The worked example of docs/handbook/what-moves.md, and sums that must hold for any pieces. All figures are invented. */
class MoveTableTest {

    private static final LocalDate FIRST = LocalDate.of(2025, 3, 1);
    private static final LocalDate LAST = LocalDate.of(2025, 3, 31);
    private static final UUID BOX = new UUID(0, 1);
    private static final UUID TRAY = new UUID(0, 2);
    private static final UUID FRAME = new UUID(0, 3);

    @Test
    void theWorkedExample() {
        MoveFacts facts = new MoveFacts(
                Map.of(BOX, day(2, 1), TRAY, day(3, 2), FRAME, day(3, 3)),
                Map.of(offer(10), List.of("Stall"), offer(11), List.of("Stall", "Web shop")),
                new OfferFacts(
                        List.of(
                                spell(BOX, 10, new Span(day(2, 20), day(3, 12))),
                                spell(TRAY, 11, new Span(day(3, 5), null))),
                        Map.of(offer(10), List.of(new Span(day(3, 1), day(3, 6)))),
                        List.of(
                                new Sold(BOX, day(3, 12), "Stall", false, 5100, 1620, 2940),
                                new Sold(FRAME, day(3, 20), "Web shop", false, 3000, 1000, 1700))));
        List<Group> styles = List.of(new Group(BOX, "Cottage"), new Group(TRAY, "Cottage"), new Group(FRAME, ""));
        MoveTable table = MoveTable.byPiece(facts, FIRST, LAST, styles);
        MoveRow cottage = table.rows().get(1);
        assertThat(cottage)
                .usingRecursiveComparison()
                .ignoringFields("drawn", "behind")
                .isEqualTo(new MoveRow(
                        "Cottage",
                        1,
                        2,
                        1,
                        1,
                        new BigDecimal("15"),
                        1,
                        Amount.of(1620),
                        Amount.of(5100),
                        Amount.of(2940),
                        null,
                        cottage.behind()));
        assertThat(cottage.sellThrough()).isEqualTo(Percent.of("50.0"));
        assertThat(cottage.margin()).isEqualTo(Percent.of("57.6"));
        MoveRow none = table.rows().get(0);
        assertThat(none.medianDays()).as("sold without an offer").isNull();
        assertThat(none.sellThrough()).as("a sale implies an offer").isEqualTo(Percent.of("100.0"));
        assertThat(table.whole().sold()).isEqualTo(2);

        List<MoveRow> channels = MoveTable.byChannel(facts, FIRST, LAST).rows();
        assertThat(channels).extracting(MoveRow::name).containsExactly("Stall", "Web shop");
        assertThat(channels).extracting(MoveRow::onOffer).containsExactly(2, 2);
        assertThat(channels).extracting(MoveRow::sold).containsExactly(1, 1);
    }

    /** The eight styles of the check values: c is the best, though all of a, one of one, sold; h comes before a too. */
    @Test
    void oneOfOneIsNotTheBest() {
        List<Group> groups = new ArrayList<>();
        List<Spell> spells = new ArrayList<>();
        List<Sold> sold = new ArrayList<>();
        Map<String, Double> wanted = new HashMap<>();
        GivenRows.of("shrinkage-unequal-n-expected").forEach(row -> {
            wanted.put(row.get("style"), Double.valueOf(row.get("shrunk")));
            for (int i = 0; i < Integer.parseInt(row.get("listed")); i++) {
                UUID piece = new UUID(row.get("style").charAt(0), i);
                groups.add(new Group(piece, row.get("style")));
                spells.add(spell(piece, 100 + spells.size(), new Span(day(3, 1), null)));
                if (i < Integer.parseInt(row.get("sold"))) {
                    sold.add(new Sold(piece, day(3, 9), "Stall", false, 100, 0, 100));
                }
            }
        });
        MoveTable table = MoveTable.byPiece(onStall(Map.of(), spells, sold), FIRST, LAST, groups);
        assertThat(table.rows()).extracting(MoveRow::name).containsExactly("c", "f", "h", "a", "e", "b", "d", "g");
        table.rows().forEach(row -> GivenRows.assertLike(row.drawn().value(), wanted.get(row.name()), row.name()));
        assertThat(table.whole().drawn()).isNull();
    }

    @Test
    void whatCameBackIsNotSoldButItsMoneyCounts() {
        MoveFacts facts = onStall(
                Map.of(),
                List.of(spell(BOX, 10, new Span(day(3, 2), day(3, 4)))),
                List.of(new Sold(BOX, day(3, 4), "Stall", true, 0, 0, -540)));
        MoveRow whole = MoveTable.byChannel(facts, FIRST, LAST).whole();
        assertThat(whole.sold()).isZero();
        assertThat(whole.onOffer()).isEqualTo(1);
        assertThat(whole.profit()).isEqualTo(Amount.of(-540));
        assertThat(whole.margin()).isNull();
    }

    /** Two hundred random shops: groups without overlap add up to the shop, and sell-through stays below 100 %. */
    @Test
    void groupsAddUpToTheShop() {
        for (int seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            List<Group> groups = new ArrayList<>();
            MoveFacts facts = random(random, groups);
            MoveTable table = MoveTable.byPiece(facts, FIRST, LAST, groups);
            List<MoveRow> rows = table.rows();
            MoveRow whole = table.whole();
            assertThat(rows.stream().mapToInt(MoveRow::found).sum()).isEqualTo(whole.found());
            assertThat(rows.stream().mapToInt(MoveRow::onOffer).sum()).isEqualTo(whole.onOffer());
            assertThat(rows.stream().mapToInt(MoveRow::sold).sum()).isEqualTo(whole.sold());
            assertThat(rows.stream().mapToInt(MoveRow::waiting).sum()).isEqualTo(whole.waiting());
            assertThat(rows.stream().mapToInt(MoveRow::daysKnown).sum()).isEqualTo(whole.daysKnown());
            assertThat(rows.stream().map(MoveRow::net).collect(Amount.sum())).isEqualTo(whole.net());
            assertThat(rows.stream().map(MoveRow::cost).collect(Amount.sum())).isEqualTo(whole.cost());
            assertThat(rows.stream().map(MoveRow::profit).collect(Amount.sum())).isEqualTo(whole.profit());
            assertThat(rows).allMatch(row -> row.sold() <= row.onOffer());
        }
    }

    private static MoveFacts random(Random random, List<Group> groups) {
        Map<UUID, LocalDate> found = new HashMap<>();
        List<Spell> spells = new ArrayList<>();
        List<Sold> sold = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            UUID piece = new UUID(2, i);
            groups.add(new Group(piece, random.nextBoolean() ? "" : "Style " + random.nextInt(4)));
            LocalDate from = LocalDate.of(2025, 1, 15).plusDays(random.nextInt(120));
            found.put(piece, from);
            LocalDate until = random.nextBoolean() ? null : from.plusDays(random.nextInt(40));
            if (random.nextInt(5) > 0) {
                spells.add(spell(piece, i, new Span(from, until)));
            }
            if (random.nextBoolean() && until != null) {
                long net = random.nextInt(9000);
                sold.add(new Sold(piece, until, "Stall", random.nextInt(6) == 0, net, net / 3, net / 2));
            }
        }
        return onStall(found, spells, sold);
    }

    /** Every offer stands on the stall, and none pauses. */
    private static MoveFacts onStall(Map<UUID, LocalDate> found, List<Spell> spells, List<Sold> sold) {
        Map<UUID, List<String>> channels = new HashMap<>();
        spells.forEach(spell -> channels.put(spell.offer(), List.of("Stall")));
        return new MoveFacts(found, channels, new OfferFacts(spells, Map.of(), sold));
    }

    private static Spell spell(UUID piece, int offer, Span span) {
        return new Spell(piece, offer(offer), span);
    }

    private static UUID offer(int number) {
        return new UUID(1, number);
    }

    private static LocalDate day(int month, int day) {
        return LocalDate.of(2025, month, day);
    }
}
