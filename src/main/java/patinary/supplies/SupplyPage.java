package patinary.supplies;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.web.Choice;
import patinary.web.NotFound;
import patinary.web.Window;

/** Fills the page of one supply. */
@Component
class SupplyPage {

    private final SupplyStory story;
    private final SupplyCatalog catalog;
    private final SupplyKeeping keeping;
    private final ToolStory tools;
    private final List<SupplyHint> hints;

    SupplyPage(
            SupplyStory story, SupplyCatalog catalog, SupplyKeeping keeping, ToolStory tools, List<SupplyHint> hints) {
        this.story = story;
        this.catalog = catalog;
        this.keeping = keeping;
        this.tools = tools;
        this.hints = hints;
    }

    SupplyCatalog.Known find(UUID id) {
        return catalog.find(id).orElseThrow(() -> new NotFound("supply " + id));
    }

    /** What there is to say of its wear; not there where it is no tool that is spread over its uses. */
    ToolView tool(SupplyCatalog.Known supply) {
        return tools.of(supply, story.left(supply.id())).orElseThrow(() -> new NotFound("tool " + supply.id()));
    }

    /** @param worn what was typed where a tool is worn out; null where the page is drawn afresh */
    String show(UUID id, @Nullable Integer page, @Nullable WornForm worn, Model model) {
        SupplyCatalog.Known supply = find(id);
        List<SupplyStory.Left> left = story.left(id);
        model.addAttribute("supply", supply);
        model.addAttribute("facts", supply.facts());
        model.addAttribute("left", left);
        tools.of(supply, left).ifPresent(tool -> {
            model.addAttribute("tool", tool);
            model.addAttribute("correction", correction(supply));
            if (worn == null) {
                model.addAttribute("worn", WornForm.of(tool));
            }
        });
        model.addAttribute("lots", story.lots(id));
        model.addAttribute("movements", story.movements(id, Window.of(page)));
        model.addAttribute("used", keeping.isUsed(id));
        model.addAttribute(
                "hints", hints.stream().flatMap(hint -> hint.about(id).stream()).toList());
        return "supplies/show";
    }

    /** The latest correction of how many uses it lasts, or null. */
    private static @Nullable MeasureChange correction(SupplyCatalog.Known supply) {
        return supply.changes().stream()
                .filter(change -> change.name().equals(ToolUse.MEASURE))
                .reduce((earlier, later) -> later)
                .orElse(null);
    }

    static List<Choice> wears() {
        return List.of(
                Choice.said(SupplyForm.NO_TOOL, "supplies.wear.NONE"),
                Choice.said(Wear.AT_ONCE.name(), "supplies.wear.AT_ONCE"),
                Choice.said(Wear.BY_USE.name(), "supplies.wear.BY_USE"));
    }
}
