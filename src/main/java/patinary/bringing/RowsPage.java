package patinary.bringing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.springframework.validation.Errors;
import patinary.web.Choice;
import patinary.web.Page;
import patinary.web.Window;

/** The rows of a file whose things are not known by their codes, with the pieces that may be meant. */
@Component
class RowsPage {

    static final int SIZE = 20;

    private static final int LIKELY = 5;
    /** From this likeness on a piece stands chosen already; she confirms it with the page. Common practice, no source. */
    private static final double CLEAR = 0.6;

    private final Bringing bringing;

    RowsPage(Bringing bringing) {
        this.bringing = bringing;
    }

    /** The rows to be shown: those without an answer, or all. Rows of orders that are in the books are never asked for. */
    List<Sheet.Row> rows(Drafts.Draft draft, Planner planner, boolean all) {
        Sheet sheet = draft.sheet();
        Set<Integer> known = planner.plan(sheet).with(Plan.Standing.KNOWN).stream()
                .flatMap(order -> order.order().rows().stream())
                .map(Sheet.Row::number)
                .collect(Collectors.toSet());
        return draft.mapping().rows(sheet).stream()
                .filter(row -> !known.contains(row.number()))
                .filter(row -> all || planner.choice(row).isEmpty())
                .toList();
    }

    String fill(Model model, Drafts.Draft draft, boolean all, Window asked) {
        Window window = new Window(asked.number(), SIZE);
        Planner planner = bringing.planner(draft);
        List<Sheet.Row> rows = rows(draft, planner, all);
        List<Sheet.Row> shown =
                rows.stream().skip(window.offset()).limit(window.size()).toList();
        Likeness likeness = new Likeness(planner.goods().free());
        RowsForm form = new RowsForm();
        Set<String> used = used(draft, planner);
        Map<String, RowChoice> alike = alike(draft, planner);
        List<OpenRow> open = new ArrayList<>();
        for (Sheet.Row row : shown) {
            List<Likeness.Like> likely = likeness.most(draft.mapping().cell(row, Meaning.TITLE), LIKELY);
            List<Likeness.Like> several =
                    likeness.most(draft.mapping().cell(row, Meaning.TITLE), LIKELY + quantity(row, draft.mapping()));
            form.rows.add(several(row, draft.mapping(), planner, several, used)
                    .orElseGet(() -> line(row, draft.mapping(), planner, likely, used, alike)));
            open.add(view(row, draft.mapping(), planner, likely));
        }
        model.addAttribute("form", form);
        model.addAttribute("page", Page.of(window, open, rows.size()));
        return around(model, draft, all, planner);
    }

    /** The page again with what was typed and what is wrong with it. */
    String again(Model model, Drafts.Draft draft, boolean all, RowsForm form) {
        Planner planner = bringing.planner(draft);
        Likeness likeness = new Likeness(planner.goods().free());
        Map<String, Sheet.Row> byNumber = draft.mapping().rows(draft.sheet()).stream()
                .collect(Collectors.toMap(row -> String.valueOf(row.number()), row -> row));
        form.rows.removeIf(line -> line == null || !byNumber.containsKey(line.row));
        List<OpenRow> open = form.rows.stream()
                .map(line -> byNumber.get(line.row))
                .map(row -> view(
                        row,
                        draft.mapping(),
                        planner,
                        likeness.most(draft.mapping().cell(row, Meaning.TITLE), LIKELY)))
                .toList();
        model.addAttribute("page", Page.of(new Window(1, SIZE), open, open.size()));
        return around(model, draft, all, planner);
    }

    /** What was answered; what names no piece or supply of the shop is said beside its field. */
    Map<Integer, Optional<RowChoice>> read(RowsForm form, Goods goods, Errors errors) {
        Map<Integer, Optional<RowChoice>> choices = new HashMap<>();
        for (int i = 0; i < form.rows.size(); i++) {
            RowsForm.Line line = form.rows.get(i);
            if (line == null || !line.row.matches("[0-9]{1,4}")) {
                continue;
            }
            Optional<RowChoice> choice = choice(line, goods);
            if (choice.isEmpty() && !(line.codes.isBlank() && line.pick.isEmpty())) {
                errors.rejectValue("rows[" + i + "].codes", "bringing.error.unknown-piece");
            }
            choices.put(Integer.valueOf(line.row), choice);
        }
        return choices;
    }

    private static Optional<RowChoice> choice(RowsForm.Line line, Goods goods) {
        if (!line.codes.isBlank()) {
            String codes = String.join(" ", Goods.codes(line.codes));
            return Optional.of(codes)
                    .filter(text -> text.length() <= 400 && goods.knows(text))
                    .map(RowChoice::pieces);
        }
        Stream<RowChoice> supplies = goods.shelf().stream().map(Goods.Retail::choice);
        Stream<RowChoice> pieces = line.pick.startsWith("piece:") && goods.knows(line.pick.substring(6))
                ? Stream.of(RowChoice.pieces(line.pick.substring(6)))
                : Stream.of();
        return Stream.of(Stream.of(RowChoice.OUT), pieces, supplies)
                .flatMap(one -> one)
                .filter(one -> one.value().equals(line.pick))
                .findFirst();
    }

    private static String around(Model model, Drafts.Draft draft, boolean all, Planner planner) {
        model.addAttribute("draft", draft);
        model.addAttribute("all", all);
        model.addAttribute(
                "shelf",
                planner.goods().shelf().stream()
                        .map(one -> Choice.named(one.choice().value(), one.name()))
                        .toList());
        model.addAttribute("pieces", planner.goods().free());
        return "bringing/rows";
    }

    /** A row of two or more of a kind: as many like pieces as it sold, where there are so many. */
    private static Optional<RowsForm.Line> several(
            Sheet.Row row, Mapping mapping, Planner planner, List<Likeness.Like> likely, Set<String> used) {
        int quantity = quantity(row, mapping);
        if (quantity < 2 || planner.choice(row).isPresent()) {
            return Optional.empty();
        }
        List<String> codes = likely.stream()
                .filter(like -> like.likeness() >= CLEAR)
                .map(like -> like.piece().code())
                .filter(code -> !used.contains(code))
                .limit(quantity)
                .toList();
        if (codes.size() < quantity) {
            return Optional.empty();
        }
        used.addAll(codes);
        RowsForm.Line line = new RowsForm.Line();
        line.row = String.valueOf(row.number());
        line.codes = String.join(" ", codes);
        return Optional.of(line);
    }

    /** How many a row sold, as far as that is plain to see; the plan reads it with all care. */
    private static int quantity(Sheet.Row row, Mapping mapping) {
        String typed = mapping.cell(row, Meaning.QUANTITY).strip();
        return typed.matches("[1-9][0-9]?") ? Integer.parseInt(typed) : 1;
    }

    private static RowsForm.Line line(
            Sheet.Row row,
            Mapping mapping,
            Planner planner,
            List<Likeness.Like> likely,
            Set<String> used,
            Map<String, RowChoice> alike) {
        RowsForm.Line line = new RowsForm.Line();
        line.row = String.valueOf(row.number());
        Optional<RowChoice> chosen = planner.choice(row);
        if (chosen.isPresent()) {
            boolean offered = chosen.get().what() != RowChoice.What.PIECES
                    || likely.stream()
                            .anyMatch(like -> like.piece()
                                    .code()
                                    .equalsIgnoreCase(chosen.get().codes()));
            line.pick = offered ? chosen.get().value() : "";
            line.codes = offered ? "" : chosen.get().codes();
            return line;
        }
        Optional<RowChoice> same = Optional.ofNullable(alike.get(named(row, mapping)));
        line.pick = same.map(RowChoice::value)
                .or(() -> likely.stream()
                        .filter(like -> like.likeness() >= CLEAR
                                && used.add(like.piece().code()))
                        .findFirst()
                        .map(like -> RowChoice.pieces(like.piece().code()).value()))
                .orElse("");
        return line;
    }

    private static OpenRow view(Sheet.Row row, Mapping mapping, Planner planner, List<Likeness.Like> likely) {
        String price = mapping.cell(row, Meaning.PRICE);
        return new OpenRow(
                row.number(),
                row.line(),
                mapping.cell(row, Meaning.ORDER),
                mapping.cell(row, Meaning.DATE),
                mapping.cell(row, Meaning.TITLE),
                mapping.cell(row, Meaning.CODE),
                price.isEmpty() ? mapping.cell(row, Meaning.LINE_TOTAL) : price,
                likely.stream()
                        .map(like -> Choice.named(
                                RowChoice.pieces(like.piece().code()).value(),
                                like.piece().code() + " " + like.piece().title()))
                        .toList());
    }

    /** A thing that was a supply in another row is proposed to be that supply again. */
    private static Map<String, RowChoice> alike(Drafts.Draft draft, Planner planner) {
        Map<String, RowChoice> alike = new HashMap<>();
        for (Sheet.Row row : draft.mapping().rows(draft.sheet())) {
            planner.choice(row)
                    .filter(choice -> choice.what() == RowChoice.What.SUPPLY)
                    .ifPresent(choice -> alike.put(named(row, draft.mapping()), choice));
        }
        return alike;
    }

    private static Set<String> used(Drafts.Draft draft, Planner planner) {
        Set<String> used = new HashSet<>();
        draft.mapping()
                .rows(draft.sheet())
                .forEach(row -> planner.choice(row).ifPresent(choice -> used.addAll(Goods.codes(choice.codes()))));
        return used;
    }

    private static String named(Sheet.Row row, Mapping mapping) {
        return mapping.cell(row, Meaning.TITLE) + "\u001F" + mapping.cell(row, Meaning.CODE);
    }
}
