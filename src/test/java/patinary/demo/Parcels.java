package patinary.demo;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** Boxes, tissue and tape: bought, packed into every sale sent since, the first of them a little before; all invented. */
final class Parcels {

    private static final LocalDate FIRST_PACKED = LocalDate.of(2026, 2, 15);
    private static final LocalDate BOUGHT = LocalDate.of(2026, 2, 24);
    private static final LocalDate COUNTED = LocalDate.of(2026, 4, 25);
    private static final String LINE = "Wrenfold packing goods";
    private static final int ID = 0;
    private static final int DATE = 1;
    private static final int ORDER = 6;
    private static final int SHIPPING = 8;
    private static final int BOX = 0;
    private static final int LARGE_BOX = 1;
    private static final int TISSUE = 2;
    private static final int TAPE = 3;

    private record Wrap(int what, String typed, int quantity, boolean byEye) {}

    private static final List<Wrap> SMALL = List.of(
            new Wrap(BOX, "1 box", 1, false), new Wrap(TISSUE, "3 sheets", 3, false), new Wrap(TAPE, "1 m", 100, true));
    private static final List<Wrap> LARGE = List.of(
            new Wrap(LARGE_BOX, "1 box", 1, false),
            new Wrap(TISSUE, "8 sheets", 8, false),
            new Wrap(TAPE, "2 m", 200, true));

    private final State shop;

    Parcels(State shop) {
        this.shop = shop;
    }

    /** To be called when every other row is written: it draws last. */
    void write() {
        shop.rows.add("supply_line", shop.id(LINE), LINE, "Wrenfold Carton (invented)");
        int before = shop.supplies.size();
        supply("Small box", "COUNT", "", 25, 2125);
        supply("Large box", "COUNT", "", 10, 1640);
        supply("White tissue", "COUNT", "", 240, 1190);
        supply("Parcel tape", "LENGTH", "cm", 6600, 395);
        List<State.Supply> goods = List.copyOf(shop.supplies.subList(before, shop.supplies.size()));
        measure(goods.get(BOX), "box", "bundle");
        measure(goods.get(LARGE_BOX), "box", "bundle");
        measure(goods.get(TISSUE), "sheet", "ream");
        shop.rows.add("supply_pack", goods.get(TAPE).id, "roll", goods.get(TAPE).content);
        buy(goods);
        way("Small parcel", SMALL, goods);
        way("Large parcel", LARGE, goods);
        shop.rows.of("sale").stream()
                .filter(sale -> !sale.get(ORDER).isEmpty())
                .filter(sale -> !LocalDate.parse(sale.get(DATE)).isBefore(FIRST_PACKED))
                .forEach(sale -> pack(sale, goods));
        shop.day = COUNTED;
        State.Supply tape = goods.get(TAPE);
        shop.rows.add(
                "supply_count", shop.document(shop.draws.id(), "", tape.id, "BENCH", tape.bench - 450, false, ""));
        shop.day = State.LAST;
    }

    private void supply(String name, String dimension, String unit, int content, int price) {
        UUID id = shop.id(name);
        shop.rows.add("supply", id, shop.id(LINE), name, dimension, "", "", "", "", "");
        shop.supplies.add(new State.Supply(id, name, unit, content, price, false, false));
    }

    private void measure(State.Supply supply, String one, String pack) {
        shop.rows.add("supply_measure", supply.id, one, 1);
        shop.rows.add("supply_pack", supply.id, pack, supply.content);
    }

    private void buy(List<State.Supply> goods) {
        shop.day = BOUGHT;
        Till till = new Till(shop);
        goods.forEach(supply -> till.supply(supply, supply.content == 10 ? 2 : 1, false, 0));
        long total = till.total();
        List<Object[]> payments = List.<Object[]>of(new Object[] {"PLACE", shop.id(Catalogue.BANK), total});
        till.write("Plank and Pigment supply room", "", "To pack in", payments);
        shop.pay(Catalogue.BANK, -total);
    }

    private void way(String name, List<Wrap> wraps, List<State.Supply> goods) {
        UUID id = shop.draws.id();
        shop.rows.add("parcel", id, name);
        for (int i = 0; i < wraps.size(); i++) {
            Wrap wrap = wraps.get(i);
            shop.rows.add("parcel_wrap", id, i + 1, goods.get(wrap.what()).id, wrap.typed(), wrap.byEye());
        }
    }

    /** What costs more to send is the larger parcel. */
    private void pack(List<String> sale, List<State.Supply> goods) {
        boolean large = Double.parseDouble(sale.get(SHIPPING)) > 15;
        List<Wrap> wraps = large ? LARGE : SMALL;
        for (int i = 0; i < wraps.size(); i++) {
            Wrap wrap = wraps.get(i);
            State.Supply supply = goods.get(wrap.what());
            shop.rows.add("sale_wrap", sale.get(ID), i + 1, supply.id, wrap.typed(), wrap.quantity(), wrap.byEye());
            if (!LocalDate.parse(sale.get(DATE)).isAfter(COUNTED)) {
                supply.bench -= wrap.quantity();
            }
        }
    }
}
