package patinary.mixes;

import jakarta.servlet.http.HttpServletResponse;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.util.UriComponentsBuilder;
import patinary.measure.Dimension;
import patinary.measure.MixRatio;
import patinary.measure.Quantity;
import patinary.money.Percent;
import patinary.shop.CurrentShop;
import patinary.supplies.QuantityWords;
import patinary.supplies.SupplyCatalog;
import patinary.supplies.SupplyCatalog.Known;
import patinary.supplies.SupplyMeasures;
import patinary.web.Answers;

/** The mixing helper: amounts for a wanted volume, and how much of an additive at most. */
@Controller
@RequestMapping("/mixes")
class MixController {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final SupplyCatalog catalog;
    private final CurrentShop shop;

    MixController(SupplyCatalog catalog, CurrentShop shop) {
        this.catalog = catalog;
        this.shop = shop;
    }

    @GetMapping
    String show(@ModelAttribute("form") MixForm form, BindingResult errors, Model model, HttpServletResponse response) {
        Answers answers = new Answers(errors, shop.currency());
        List<Known> supplies = catalog.all();
        List<Known> limited = supplies.stream()
                .filter(supply -> supply.facts().limits().most() != null)
                .toList();
        if (form.isAsked()) {
            Optional<Recipe> recipe = recipe(form, answers);
            recipe.ifPresent(found -> tell(model, found, form, supplies, answers));
            if (answers.anyWrong()) {
                response.setStatus(422);
            }
        }
        model.addAttribute("form", form);
        model.addAttribute("limited", limited);
        model.addAttribute("additives", limited.stream().map(Known::choice).toList());
        model.addAttribute("supplies", supplies.stream().map(Known::choice).toList());
        return "mixes/mixes";
    }

    private static Optional<Recipe> recipe(MixForm form, Answers answers) {
        Optional<BigDecimal> wanted = answers.quantity("wanted", form.wanted, Dimension.VOLUME, List.of())
                .filter(volume -> isSome("wanted", volume, answers));
        Optional<BigDecimal> first = part("first", form.first, answers);
        Optional<BigDecimal> second = part("second", form.second, answers);
        Optional<BigDecimal> makes = answers.percent("makes", form.makes)
                .map(Percent::value)
                .filter(share -> isSome("makes", share, answers));
        if (answers.anyWrong() || wanted.isEmpty() || first.isEmpty() || second.isEmpty() || makes.isEmpty()) {
            return Optional.empty();
        }
        MixRatio ratio = new MixRatio(first.get(), second.get(), makes.get().divide(HUNDRED, 6, RoundingMode.HALF_UP));
        return Optional.of(Recipe.of(ratio, Quantity.ofBase(wanted.get(), Dimension.VOLUME)));
    }

    private static Optional<BigDecimal> part(String field, String text, Answers answers) {
        return answers.decimal(field, text, "mixes.error.part").filter(part -> isSome(field, part, answers));
    }

    private static boolean isSome(String field, BigDecimal number, Answers answers) {
        if (number.signum() <= 0) {
            answers.wrong(field, "mixes.error.part");
        }
        return number.signum() > 0;
    }

    private static void tell(Model model, Recipe recipe, MixForm form, List<Known> supplies, Answers answers) {
        model.addAttribute("recipe", recipe);
        find(supplies, form.additive)
                .filter(additive -> additive.facts().limits().most() != null)
                .ifPresent(additive -> additive(model, recipe, form, additive, answers));
        find(supplies, form.supply).ifPresent(supply -> model.addAttribute("start", start(recipe, form, supply)));
    }

    private static void additive(Model model, Recipe recipe, MixForm form, Known additive, Answers answers) {
        Percent most = Objects.requireNonNull(additive.facts().limits().most());
        model.addAttribute("additive", additive);
        model.addAttribute("most", AdditiveCheck.most(most, recipe.makes()));
        if (form.amount.isBlank()) {
            return;
        }
        answers.quantity("amount", form.amount, additive.facts().dimension(), SupplyMeasures.of(additive.facts()))
                .ifPresent(amount -> {
                    model.addAttribute("amount", amount);
                    AdditiveCheck.of(
                                    additive.id(),
                                    additive.facts(),
                                    amount,
                                    recipe.makes().add(amount))
                            .ifPresent(much -> model.addAttribute("tooMuch", much));
                });
    }

    /** The form of a bench entry with this pot written in. */
    private static String start(Recipe recipe, MixForm form, Known supply) {
        UriComponentsBuilder link = UriComponentsBuilder.fromPath("/bench/new")
                .queryParam("handling.pots[0].inside[0].supply", "{supply}")
                .queryParam("handling.pots[0].water", "{water}")
                .queryParam("handling.pots[0].made", "{made}");
        List<String> values = new java.util.ArrayList<>(
                List.of(supply.id().toString(), typed(recipe.second()), typed(recipe.makes())));
        if (supply.facts().dimension() == Dimension.VOLUME) {
            link.queryParam("handling.pots[0].inside[0].quantity", "{first}");
            values.add(typed(recipe.first()));
        }
        if (!form.additive.isBlank() && !form.amount.isBlank()) {
            link.queryParam("handling.pots[0].inside[1].supply", "{additive}");
            link.queryParam("handling.pots[0].inside[1].quantity", "{amount}");
            values.addAll(List.of(form.additive, form.amount));
        }
        return link.encode().buildAndExpand(values.toArray()).toUriString();
    }

    private static String typed(BigDecimal millilitres) {
        return QuantityWords.typed(millilitres, Dimension.VOLUME);
    }

    private static Optional<Known> find(List<Known> supplies, String id) {
        return supplies.stream()
                .filter(supply -> supply.id().toString().equals(id))
                .findFirst();
    }
}
