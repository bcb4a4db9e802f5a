package patinary.covering;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.shop.CurrentShop;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Page;
import patinary.web.Window;

/** What no payout covers, by balance and age. */
@Controller
@RequestMapping("/payouts/balances")
class BalanceController {

    private final CoverBook book;
    private final CurrentShop shop;

    BalanceController(CoverBook book, CurrentShop shop) {
        this.book = book;
        this.shop = shop;
    }

    @GetMapping
    String list(Model model) {
        model.addAttribute("places", book.places());
        return "covering/balances";
    }

    @GetMapping(Ids.PATH)
    String show(@PathVariable UUID id, @RequestParam(required = false) @Nullable Integer page, Model model) {
        CoverBook.Place place = book.places().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new NotFound("Balance " + id));
        BalanceCover cover = book.of(id);
        Window window = Window.of(page);
        List<Movement> open = cover.open();
        model.addAttribute("place", place);
        model.addAttribute("cover", cover);
        model.addAttribute("ages", Ages.of(open, shop.today()));
        model.addAttribute("rows", Page.within(open, window));
        model.addAttribute("today", shop.today());
        return "covering/balance";
    }
}
