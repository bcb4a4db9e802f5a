package patinary.insight;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.shop.CurrentShop;
import patinary.web.Fmt;
import patinary.web.House;
import patinary.web.NotFound;
import patinary.web.Window;

/** The front page, and the rows behind each of its figures. */
@Controller
class HomeController {

    /** What one part of the front page shows. */
    record Part(String name, List<Shelf.Heap> heaps) {}

    private final Shelf shelf;
    private final CurrentShop shop;
    private final Fmt fmt;
    private final House house;

    HomeController(Shelf shelf, CurrentShop shop, Fmt fmt, House house) {
        this.shelf = shelf;
        this.shop = shop;
        this.fmt = fmt;
        this.house = house;
    }

    @GetMapping("/")
    String home(Model model) {
        if (shelf.isEmpty()) {
            model.addAttribute("hasMoneyPlace", shelf.hasMoneyPlace());
            return "insight/first-run";
        }
        List<Shelf.Heap> heaps = shelf.heaps(shop.today());
        model.addAttribute("parts", parts(heaps));
        model.addAttribute("fmt", fmt);
        return "insight/home";
    }

    @GetMapping("/on-the-shelf/{list}")
    String rows(@PathVariable String list, @RequestParam(required = false) @Nullable Integer page, Model model) {
        ShelfList known = ShelfList.of(list).filter(this::isShown).orElseThrow(() -> new NotFound("list " + list));
        model.addAttribute("list", known);
        model.addAttribute("rows", shelf.rows(known, shop.today(), Window.of(page)));
        model.addAttribute("amount", shelf.amount(known, shop.today()));
        model.addAttribute("fmt", fmt);
        return "insight/shelf-list";
    }

    private List<Part> parts(List<Shelf.Heap> heaps) {
        List<Shelf.Heap> shown =
                heaps.stream().filter(heap -> isShown(heap.list())).toList();
        Part toDo = part(ShelfList.Group.DO, shown);
        return house.tellsCosts()
                ? List.of(toDo, part(ShelfList.Group.MONEY, shown), part(ShelfList.Group.TIED, shown))
                : List.of(toDo);
    }

    private boolean isShown(ShelfList list) {
        return list.isWork() || house.tellsCosts();
    }

    private static Part part(ShelfList.Group group, List<Shelf.Heap> heaps) {
        return new Part(
                group.name().toLowerCase(java.util.Locale.ROOT),
                heaps.stream().filter(heap -> heap.list().group() == group).toList());
    }
}
