package patinary.demo;

import static patinary.demo.Draws.usd;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What is on offer: first prices, later ones, pauses and withdrawals. */
final class Offering {

    static final class Offer {
        final UUID id;
        final List<State.Piece> pieces;
        final List<String> channels;
        final LocalDate since;
        final long fair;
        final String title;
        long price;

        /** What the offers of like pieces have in common. */
        @Nullable
        UUID group;

        @Nullable
        LocalDate pausedUntil;

        @Nullable
        LocalDate ended;

        Offer(UUID id, List<State.Piece> pieces, List<String> channels, LocalDate since, long fair, long price) {
            this.id = id;
            this.pieces = pieces;
            this.channels = channels;
            this.since = since;
            this.fair = fair;
            this.price = price;
            title = pieces.size() == 1 ? pieces.get(0).title : "Set: " + pieces.get(0).title + " and one more";
        }

        boolean isOpen(LocalDate day) {
            return ended == null && (pausedUntil == null || pausedUntil.isBefore(day));
        }
    }

    /** From then on she had no time to take anything down. */
    private static final LocalDate BUSY = LocalDate.of(2026, 4, 1);

    final List<Offer> open = new ArrayList<>();
    private final State shop;
    /** The cells that may still change are written when the year is over. */
    private final List<Runnable> atTheEnd = new ArrayList<>();

    Offering(State shop) {
        this.shop = shop;
    }

    void today() {
        List<State.Piece> ready = shop.in("READY").stream()
                .filter(piece -> piece.since.isBefore(shop.day.minusDays(shop.draws.between(0, 4))))
                .toList();
        boolean set = ready.size() >= 2 && shop.draws.chance(0.6);
        if (set) {
            put(ready.subList(0, 2));
        }
        ready.stream().skip(set ? 2 : 0).limit(2).forEach(piece -> put(List.of(piece)));
        List.copyOf(open).forEach(this::think);
    }

    private void put(List<State.Piece> pieces) {
        long fair = pieces.stream().mapToLong(piece -> piece.value).sum();
        long price = Math.max(500, Math.round(fair * shop.draws.factor(0.75, 1.45) / 500) * 500 - 100);
        UUID id = shop.draws.id();
        List<String> channels = channels();
        Offer offer = new Offer(id, pieces, channels, shop.day, fair, price);
        besideThoseLikeIt(offer);
        Object[] cells = shop.document(id, "", offer.title, "", "");
        atTheEnd.add(() -> {
            cells[cells.length - 1] = offer.group == null ? "" : offer.group;
            cells[cells.length - 2] = offer.ended == null ? "" : offer.ended;
            shop.rows.add("offer", cells);
        });
        pieces.forEach(piece -> {
            shop.rows.add("offer_piece", id, piece.id, pieces.size() == 1 ? 1 : piece.value / 100);
            shop.move(piece, "OFFERED");
        });
        channels.forEach(channel -> shop.rows.add("offer_channel", id, shop.id(channel)));
        shop.rows.add("offer_price", id, shop.day, usd(price));
        open.add(offer);
    }

    private void besideThoseLikeIt(Offer offer) {
        open.stream()
                .filter(other -> other.pieces.size() == 1 && other.title.equals(offer.title))
                .findFirst()
                .ifPresent(other -> {
                    other.group = other.group == null ? other.id : other.group;
                    offer.group = other.group;
                });
    }

    private List<String> channels() {
        List<String> channels = new ArrayList<>(List.of(Catalogue.SITE));
        if (shop.draws.chance(0.6)) {
            channels.add(Catalogue.STALL);
        }
        if (shop.draws.chance(0.5)) {
            channels.add(Catalogue.MARKET);
        }
        return channels;
    }

    private void think(Offer offer) {
        long days = offer.since.until(shop.day, java.time.temporal.ChronoUnit.DAYS);
        if (days == 45 || days == 110) {
            offer.price = Math.max(400, offer.price * 85 / 100 / 100 * 100);
            shop.rows.add("offer_price", offer.id, shop.day, usd(offer.price));
        }
        if (shop.day.equals(LocalDate.of(2025, 8, 4)) && shop.draws.chance(0.5)) {
            offer.pausedUntil = shop.day.plusDays(13);
            shop.rows.add("offer_pause", offer.id, shop.day, offer.pausedUntil);
        }
        if (days > 150 && shop.draws.chance(0.008)) {
            withdraw(offer);
        }
    }

    private void withdraw(Offer offer) {
        offer.ended = shop.day;
        over(offer, "");
        // Some go up again in another season, the rest stays in the cupboard.
        offer.pieces.forEach(piece -> {
            shop.move(piece, shop.draws.chance(0.3) ? "READY" : "RESTING");
            if (piece.state.equals("READY")) {
                piece.since = shop.day.plusDays(40);
            }
        });
    }

    /** An offer is over: she takes it down where else it stood, but at the stall, where nothing stands. */
    void over(Offer offer, String soldOn) {
        open.remove(offer);
        if (shop.day.isBefore(BUSY)) {
            offer.channels.stream()
                    .filter(channel -> !channel.equals(soldOn) && !channel.equals(Catalogue.STALL))
                    .forEach(channel ->
                            shop.rows.add("offer_taken_down", offer.id, shop.id(channel), shop.day, shop.day));
        }
    }

    void finish() {
        atTheEnd.forEach(Runnable::run);
    }
}
