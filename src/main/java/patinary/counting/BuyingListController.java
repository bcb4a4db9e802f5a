package patinary.counting;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import patinary.shop.CurrentShop;

/** What runs low, where to buy it, and from there to a receipt. */
@Controller
@RequestMapping("/buying-list")
class BuyingListController {

    private final BuyingList list;
    private final CurrentShop shop;

    BuyingListController(BuyingList list, CurrentShop shop) {
        this.list = list;
        this.shop = shop;
    }

    /** A row with its numbers for reading. */
    record View(
            BuyRow row,
            @Nullable BigDecimal perWeek,
            @Nullable BigDecimal slow,
            @Nullable BigDecimal fast,
            @Nullable BigDecimal weeks,
            @Nullable BigDecimal atLeast,
            @Nullable BigDecimal atMost) {

        /** A stock that may last longer than this many weeks is said to last that or more. */
        private static final double LONG = 200;

        static View of(BuyRow row) {
            UseRate rate = row.rate();
            UseRate.Weeks lasts = row.lasts();
            return rate == null || lasts == null
                    ? new View(row, null, null, null, null, null, null)
                    : new View(
                            row,
                            BigDecimal.valueOf(rate.perWeek()),
                            BigDecimal.valueOf(rate.low()),
                            BigDecimal.valueOf(rate.high()),
                            whole(lasts.middle()),
                            whole(lasts.atLeast()),
                            lasts.atMost() > LONG ? null : whole(lasts.atMost()));
        }

        private static BigDecimal whole(double weeks) {
            return BigDecimal.valueOf(weeks).setScale(0, RoundingMode.HALF_UP);
        }
    }

    @GetMapping
    String show(Model model) {
        List<BuyRow> rows = list.rows(shop.today());
        model.addAttribute("errands", BuyingList.errands(rows));
        model.addAttribute("rows", rows.stream().map(View::of).toList());
        return "counting/buying-list";
    }
}
