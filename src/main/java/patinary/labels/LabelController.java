package patinary.labels;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.places.Places;
import patinary.web.Answers;
import patinary.web.Choice;

/** Choosing pieces and the sheet, and the file to print. Nothing is stored by printing. */
@Controller
@RequestMapping("/labels")
class LabelController {

    private static final List<String> STATES = List.of("FOUND", "BENCH", "READY", "OFFERED");

    private final LabelPieces pieces;
    private final Places places;
    private final LabelGrids grids;
    private final GridNames names;
    private final SheetReading reading;

    LabelController(LabelPieces pieces, Places places, LabelGrids grids, GridNames names, SheetReading reading) {
        this.pieces = pieces;
        this.places = places;
        this.grids = grids;
        this.names = names;
        this.reading = reading;
    }

    @GetMapping
    String choose(
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String state,
            @RequestParam(defaultValue = "") String place,
            @RequestParam(defaultValue = "") String since,
            Model model) {
        String known = STATES.contains(state) ? state : "";
        model.addAttribute("rows", pieces.find(q, known, place, day(since)));
        model.addAttribute("q", q);
        model.addAttribute("state", known);
        model.addAttribute("place", place);
        model.addAttribute("since", since);
        model.addAttribute("most", LabelPieces.MOST);
        model.addAttribute(
                "states",
                STATES.stream()
                        .map(word -> Choice.said(word, "pieces.state." + word))
                        .toList());
        model.addAttribute(
                "places",
                places.all().stream()
                        .map(one -> Choice.named(one.name(), one.name()))
                        .toList());
        return "labels/labels";
    }

    @GetMapping("/sheet")
    String sheet(
            @ModelAttribute("form") SheetForm form,
            BindingResult errors,
            @RequestParam(required = false) @Nullable List<String> piece,
            Model model) {
        if (piece != null) {
            form.codes = String.join("\n", piece) + (form.codes.isBlank() ? "" : "\n" + form.codes);
        }
        return page(form, model);
    }

    @GetMapping("/sheet.pdf")
    Object file(
            @ModelAttribute("form") SheetForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        Optional<SheetReading.Sheet> sheet = reading.read(form, errors, request);
        if (sheet.isEmpty()) {
            response.setStatus(422);
            return page(form, model);
        }
        return labels(sheet.get());
    }

    private static ResponseEntity<byte[]> labels(SheetReading.Sheet sheet) {
        return Pdf.answer("sheet-of-labels.pdf", LabelFile.labels(sheet.grid(), sheet.first(), sheet.labels()));
    }

    private String page(SheetForm form, Model model) {
        List<KnownGrid> all = grids.all();
        if (form.grid.isEmpty()) {
            form.grid = all.get(0).key();
        }
        KnownGrid shown = Stream.concat(grids.find(form.grid).stream(), all.stream())
                .findFirst()
                .orElseThrow();
        model.addAttribute("grids", names.choices(all));
        model.addAttribute("shown", shown.key());
        model.addAttribute("shownName", names.of(shown));
        model.addAttribute("cells", rows(shown.grid()));
        return "labels/sheet";
    }

    /** The numbers of the cells as they lie on the page. */
    private static List<List<Integer>> rows(LabelGrid grid) {
        return IntStream.range(0, grid.rows())
                .mapToObj(row -> IntStream.rangeClosed(1, grid.columns())
                        .mapToObj(column -> row * grid.columns() + column)
                        .toList())
                .toList();
    }

    private static @Nullable LocalDate day(String typed) {
        try {
            return typed.isBlank() ? null : Answers.day(typed.strip());
        } catch (DateTimeParseException unreadable) {
            return null;
        }
    }
}
