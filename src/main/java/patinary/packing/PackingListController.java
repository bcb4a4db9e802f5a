package patinary.packing;

import jakarta.servlet.http.HttpServletResponse;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.places.CodeText;
import patinary.places.PieceCodes;
import patinary.places.Places;
import patinary.shop.CurrentShop;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** One market day: choosing pieces, ticking them off when packed, and again when they are home. */
@Controller
@RequestMapping("/market-days" + Ids.PATH)
class PackingListController {

    private final PackingLists lists;
    private final Packing packing;
    private final PieceCodes codes;
    private final Places places;
    private final CurrentShop shop;

    PackingListController(PackingLists lists, Packing packing, PieceCodes codes, Places places, CurrentShop shop) {
        this.lists = lists;
        this.packing = packing;
        this.codes = codes;
        this.places = places;
        this.shop = shop;
    }

    @GetMapping
    String show(@PathVariable UUID id, Model model) {
        var pieces = packing.of(id);
        model.addAttribute("list", find(id));
        model.addAttribute("pieces", pieces);
        model.addAttribute("totals", PackingTotals.of(pieces, shop.currency().digits()));
        return "packing/list";
    }

    @GetMapping("/add")
    String choose(@PathVariable UUID id, @RequestParam(defaultValue = "") String place, Model model) {
        model.addAttribute("form", new AddForm());
        return addPage(id, place, model);
    }

    @PostMapping("/add")
    String add(
            @PathVariable UUID id,
            @ModelAttribute("form") AddForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        find(id);
        Set<UUID> chosen = new LinkedHashSet<>();
        form.pieces.forEach(piece -> Ids.read(piece).ifPresent(chosen::add));
        PieceCodes.Read read = codes.read(CodeText.split(form.codes));
        read.pieces().forEach(piece -> chosen.add(piece.id()));
        if (!read.unknown().isEmpty()) {
            errors.rejectValue(
                    "codes", "packing.error.unknown", new Object[] {String.join(", ", read.unknown())}, null);
        } else if (chosen.isEmpty()) {
            errors.rejectValue("codes", "packing.error.nothing");
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return addPage(id, "", model);
        }
        Notice.next(redirect, "packing.added", String.valueOf(packing.add(id, chosen)));
        return "redirect:/market-days/" + id;
    }

    @PostMapping("/pieces/{piece}/{turn:pack|unpack|home|not-home|leave}")
    String turn(@PathVariable UUID id, @PathVariable UUID piece, @PathVariable String turn) {
        String market = find(id).title();
        switch (turn) {
            case "pack" -> packing.pack(id, piece, market);
            case "unpack" -> packing.unpack(id, piece);
            case "home" -> packing.home(id, piece);
            case "not-home" -> packing.notHome(id, piece, market);
            default -> packing.leave(id, piece);
        }
        // Back to the same spot of a long list.
        return "redirect:/market-days/" + id + "#piece-" + piece;
    }

    private String addPage(UUID id, String place, Model model) {
        model.addAttribute("list", find(id));
        model.addAttribute("rows", packing.toAdd(id, place));
        model.addAttribute("place", place);
        model.addAttribute("places", places.all());
        return "packing/add";
    }

    private PackingLists.Facts find(UUID id) {
        return lists.find(id).orElseThrow(() -> new NotFound("packing list " + id));
    }
}
