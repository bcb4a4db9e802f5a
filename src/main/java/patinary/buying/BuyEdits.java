package patinary.buying;

import java.util.UUID;
import patinary.buying.BuyForm.Thing;

/** What the small buttons of the page for buying do where it runs without its script. */
final class BuyEdits {

    private BuyEdits() {}

    /** @return whether it was such a button */
    static boolean carryOut(BuyForm form, String action) {
        if (action.equals("add")) {
            add(form, new Thing());
        } else if (action.equals("like")) {
            add(form, like(form));
        } else if (action.matches("remove:[0-9]{1,3}")) {
            int at = Integer.parseInt(action.substring(7));
            if (at < form.things.size()) {
                form.things.remove(at);
            }
        } else {
            return false;
        }
        atLeastOne(form);
        return true;
    }

    /** Takes out things of which neither price nor name was typed, unless it is the only one. */
    static void tidy(BuyForm form) {
        form.things.removeIf(Thing::isEmpty);
        atLeastOne(form);
    }

    static void atLeastOne(BuyForm form) {
        if (form.things.isEmpty()) {
            add(form, new Thing());
        }
        form.things.stream()
                .filter(thing -> thing.piece.isBlank())
                .forEach(thing -> thing.piece = UUID.randomUUID().toString());
    }

    private static void add(BuyForm form, Thing thing) {
        if (form.things.size() < BuyForm.MOST_THINGS) {
            form.things.add(thing);
        }
    }

    /** All but the price: it differs nearly always, and an old one left standing would not be noticed. */
    private static Thing like(BuyForm form) {
        Thing thing = new Thing();
        if (!form.things.isEmpty()) {
            Thing last = form.things.get(form.things.size() - 1);
            thing.kind = last.kind;
            thing.style = last.style;
            thing.percent = last.percent;
            thing.otherPercent = last.otherPercent;
            thing.use = last.use;
        }
        return thing;
    }
}
