package patinary.sheets;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import patinary.measure.Sides;
import patinary.supplies.SheetSize;
import patinary.supplies.SupplyCatalog;
import patinary.web.NotFound;

/** The page that shows what is left of a supply's sheets. */
@Controller
@RequestMapping("/supplies/{id}/sheet")
class SheetController {

    /** More would not be looked at. */
    private static final int DRAWN = 4;

    private final SupplyCatalog catalog;
    private final SheetCuts cuts;

    SheetController(SupplyCatalog catalog, SheetCuts cuts) {
        this.catalog = catalog;
        this.cuts = cuts;
    }

    /** A sheet for the page, with its free rectangles as they may be typed as a cut. */
    record Drawn(List<Box> cuts, List<Box> free, List<String> sizes, BigDecimal freeArea) {
        static Drawn of(OpenSheet sheet) {
            return new Drawn(
                    sheet.cuts(),
                    sheet.free(),
                    sheet.free().stream().map(Drawn::size).toList(),
                    sheet.freeArea());
        }

        private static String size(Box box) {
            return new Sides(rounded(box.width()), rounded(box.height())).typed();
        }

        /** Down to the millimetre, lest more is promised than is there; a ruler's inches stay what they are. */
        private static BigDecimal rounded(BigDecimal side) {
            BigDecimal eighths = side.divide(new BigDecimal("0.3175"), 6, RoundingMode.HALF_UP);
            boolean isOnRuler = eighths.stripTrailingZeros().scale() <= 0;
            BigDecimal down = side.setScale(1, RoundingMode.DOWN);
            return isOnRuler || down.signum() == 0 ? side : down;
        }
    }

    @GetMapping
    String show(@PathVariable UUID id, Model model) {
        SupplyCatalog.Known supply = catalog.find(id)
                .filter(known -> known.facts().sheet() != null)
                .orElseThrow(() -> new NotFound("sheet " + id));
        SheetSize size = java.util.Objects.requireNonNull(supply.facts().sheet());
        List<SheetCuts.Used> used = cuts.of(id);
        BigDecimal left = cuts.left(id);
        SheetLayout layout = SheetLayout.of(
                size.sides(), used.stream().flatMap(use -> use.cuts().stream()).toList(), left);
        List<OpenSheet> latest = layout.opened()
                .subList(
                        Math.max(0, layout.opened().size() - DRAWN),
                        layout.opened().size());
        List<SheetCuts.Used> newestFirst = new java.util.ArrayList<>(used);
        Collections.reverse(newestFirst);
        model.addAttribute("supply", supply);
        model.addAttribute("sides", size.sides());
        model.addAttribute("left", left);
        model.addAttribute("whole", layout.whole());
        model.addAttribute("opened", layout.opened().size());
        model.addAttribute("drawings", latest.stream().map(Drawn::of).toList());
        model.addAttribute("used", newestFirst);
        return "sheets/sheet";
    }
}
