package patinary.demo;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** What the invented shop has on the day at hand. */
final class State {

    static final LocalDate FIRST = LocalDate.of(2025, 1, 1);
    static final LocalDate LAST = LocalDate.of(2026, 4, 30);

    static final class Piece {
        final UUID id;
        final String title;
        final String style;
        final boolean outdoors;
        final int value;
        int workLeft;
        String material = "";
        LocalDate since;
        String state = "FOUND";

        Piece(UUID id, String title, String style, boolean outdoors, int value, int workLeft, LocalDate since) {
            this.id = id;
            this.title = title;
            this.style = style;
            this.outdoors = outdoors;
            this.value = value;
            this.workLeft = workLeft;
            this.since = since;
        }
    }

    static final class Supply {
        final UUID id;
        final String name;
        final String unit;
        final int content;
        final int price;
        final boolean retail;
        final boolean handy;
        long bench;
        long shelf;

        Supply(UUID id, String name, String unit, int content, int price, boolean retail, boolean handy) {
            this.id = id;
            this.name = name;
            this.unit = unit;
            this.content = content;
            this.price = price;
            this.retail = retail;
            this.handy = handy;
        }
    }

    final Draws draws;
    final Rows rows = new Rows();
    final List<Piece> pieces = new ArrayList<>();
    final List<Supply> supplies = new ArrayList<>();
    final Map<String, UUID> ids = new LinkedHashMap<>();
    final Map<String, Long> money = new LinkedHashMap<>();
    long taxDue;
    LocalDate day = FIRST;

    State(long seed) {
        draws = new Draws(seed);
    }

    UUID id(String name) {
        return ids.computeIfAbsent(name, n -> draws.id());
    }

    void pay(String place, long cents) {
        money.merge(place, cents, Long::sum);
    }

    long at(String place) {
        return money.getOrDefault(place, 0L);
    }

    List<Piece> in(String state) {
        return pieces.stream().filter(piece -> piece.state.equals(state)).toList();
    }

    void move(Piece piece, String state) {
        piece.state = state;
        piece.since = day;
    }

    boolean isSaturday() {
        return day.getDayOfWeek() == DayOfWeek.SATURDAY;
    }

    boolean isFirstOfMonth() {
        return day.getDayOfMonth() == 1;
    }

    /** Starts a document of the day at hand: its id, date, note and the moment it was written down. */
    Object[] document(UUID id, String note, Object... more) {
        List<Object> cells = new ArrayList<>(List.of(id, day, note, draws.evening(day)));
        cells.addAll(List.of(more));
        return cells.toArray();
    }
}
