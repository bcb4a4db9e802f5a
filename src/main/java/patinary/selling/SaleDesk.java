package patinary.selling;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.money.Amount;
import patinary.pieces.PieceSearch;
import patinary.shop.CurrentShop;
import patinary.web.Choice;
import patinary.web.Ids;

/** What the form of a new sale and that of a recorded one have in common. */
@Component
class SaleDesk {

    private static final List<Choice> TAX_BY = List.of(
            Choice.said("", "selling.sale.tax-by.default"),
            Choice.said("SHOP", "selling.sale.tax-by.SHOP"),
            Choice.said("CHANNEL", "selling.sale.tax-by.CHANNEL"));

    private static final String NEW = "/sales/new";

    private static final List<Choice> KEEPS =
            List.of(Choice.said("OTHER", "selling.twice.keep.OTHER"), Choice.said("THIS", "selling.twice.keep.THIS"));

    private final SaleAnswers reader;
    private final SaleBasket basket;
    private final SaleGuard guard;
    private final OfferList offers;
    private final PieceFinder pieces;
    private final RetailShelf shelf;
    private final SaleLists lists;
    private final BuyerMoney buyers;
    private final WrapDesk wraps;
    private final SoldTwice clashes;
    private final SaleTax taxes;
    private final CurrentShop shop;
    private final Refusal refusal;

    SaleDesk(
            SaleAnswers reader,
            SaleBasket basket,
            SaleGuard guard,
            OfferList offers,
            PieceFinder pieces,
            RetailShelf shelf,
            SaleLists lists,
            BuyerMoney buyers,
            WrapDesk wraps,
            SoldTwice clashes,
            SaleTax taxes,
            CurrentShop shop,
            Refusal refusal) {
        this.reader = reader;
        this.basket = basket;
        this.guard = guard;
        this.offers = offers;
        this.pieces = pieces;
        this.shelf = shelf;
        this.lists = lists;
        this.buyers = buyers;
        this.wraps = wraps;
        this.clashes = clashes;
        this.taxes = taxes;
        this.shop = shop;
        this.refusal = refusal;
    }

    /** Whether something was chosen and not yet added: then it is, and its price is asked about before the sale is stored. */
    boolean tookChosen(SaleForm form, BindingResult errors) {
        if (!basket.takeChosen(form)) {
            return false;
        }
        errors.rejectValue("lines[" + (form.lines.size() - 1) + "].price", "selling.error.chosen");
        return true;
    }

    /** Reads and stores; tells on the form why it cannot. */
    boolean store(
            SaleForm form, BindingResult errors, UUID id, @Nullable SaleContent before, Consumer<SaleContent> storing) {
        Optional<SaleContent> sale = reader.read(form, errors, id, before);
        sale.ifPresent(content -> guard.check(content, id, errors));
        if (sale.isEmpty() || errors.hasErrors()) {
            return false;
        }
        try {
            storing.accept(sale.get());
            return true;
        } catch (Refused refused) {
            refusal.tell(errors, refused);
            return false;
        }
    }

    /** A button that stores nothing: works out the sums, or changes the lines. */
    String act(
            SaleForm form,
            String act,
            BindingResult errors,
            UUID id,
            @Nullable SaleContent before,
            Model model,
            String action,
            HttpServletResponse response) {
        if (WrapDesk.isOwn(act)) {
            basket.takeChosen(form);
            wraps.act(form.wraps, act, channel(form), id);
            return page(model, form, action, null);
        }
        boolean sums = act.equals("sums") || act.equals(PieceSearch.ENTER) && !form.looksForPieces(act);
        if (!sums) {
            basket.act(form, act);
            return page(model, form, action, null);
        }
        basket.takeChosen(form);
        form.fee = "";
        boolean byPlace = taxes.proposes(form);
        if (byPlace) {
            form.tax = "";
        }
        Optional<SaleContent> sale = reader.read(form, errors, id, before);
        if (sale.isEmpty()) {
            return again(model, form, action, response);
        }
        form.fee = shop.currency().plain(sale.get().fee());
        if (byPlace) {
            form.tax = shop.currency().plain(sale.get().tax());
        }
        return page(model, form, action, sale.get());
    }

    String again(Model model, SaleForm form, String action, HttpServletResponse response) {
        response.setStatus(422);
        return page(model, form, action, null);
    }

    String page(Model model, SaleForm form, String action, @Nullable SaleContent sums) {
        model.addAttribute("form", form);
        model.addAttribute("action", action);
        model.addAttribute("sums", sums);
        twice(model, form, action);
        SaleLists.Lists offered = lists.read();
        model.addAttribute("channels", offered.channels());
        model.addAttribute("places", offered.places());
        model.addAttribute("taxBys", TAX_BY);
        model.addAttribute("taxPlaces", SaleTax.choices(offered.taxPlaces()));
        Choosable open = offered(form.pieceWords);
        Choosable known = pieces.choices(true, form.pieceWords);
        model.addAttribute("offers", open.choices());
        model.addAttribute("pieces", known.choices());
        model.addAttribute("more", open.more() || known.more());
        model.addAttribute("supplies", shelf.choices());
        wraps.show(model, form.wraps, channel(form), FormId.read(form.id));
        model.addAttribute("bundles", offered.bundles());
        BuyerMoney.Held held = buyers.held();
        model.addAttribute("deposits", held.deposits());
        model.addAttribute("credits", held.credits());
        return "selling/sale-form";
    }

    /** A new sale of what another has is shown beside that one; changing a recorded sale is refused as ever. */
    private void twice(Model model, SaleForm form, String action) {
        Optional<SoldTwice.Clash> clash = action.equals(NEW) ? clashes.of(form) : Optional.empty();
        if (form.twiceDate.isBlank()) {
            form.twiceDate = shop.today().toString();
        }
        model.addAttribute("clash", clash.orElse(null));
        model.addAttribute("keeps", KEEPS);
    }

    private static @Nullable UUID channel(SaleForm form) {
        return Ids.read(form.channel).orElse(null);
    }

    private Choosable offered(String words) {
        return Choosable.of(offers.open(words).stream()
                .map(row -> Choice.named(
                        row.offerId().toString(),
                        row.title() + " " + row.codes() + " " + shop.currency().plain(Amount.of(row.priceMinor()))))
                .toList());
    }
}
