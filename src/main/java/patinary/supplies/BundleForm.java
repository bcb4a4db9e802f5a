package patinary.supplies;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import patinary.money.ShopCurrency;

/** A bundle, as typed. */
class BundleForm {

    /** So much of a supply. */
    static class Line {
        public String supply = "";
        public String quantity = "";

        boolean isEmpty() {
            return supply.isBlank() && quantity.isBlank();
        }
    }

    public String id = UUID.randomUUID().toString();
    public long version;
    public String name = "";
    public String price = "";
    public List<Line> parts = new ArrayList<>();

    static BundleForm empty() {
        BundleForm form = new BundleForm();
        form.parts.add(new Line());
        form.parts.add(new Line());
        return form;
    }

    static BundleForm of(BundleBook.Kept kept, ShopCurrency currency) {
        BundleForm form = new BundleForm();
        form.id = kept.id().toString();
        form.version = kept.version();
        form.name = kept.facts().name();
        form.price = currency.plain(kept.facts().price());
        for (Bundle.Part part : kept.facts().parts()) {
            Line line = new Line();
            line.supply = part.supplyId().toString();
            line.quantity = part.typed();
            form.parts.add(line);
        }
        return form;
    }
}
