package patinary.labels;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import patinary.places.CodeText;
import patinary.places.PieceCodes;
import patinary.places.PlacedPiece;
import patinary.web.Fmt;

/** Turns the chosen codes into labels, each as often as it is wanted. */
@Component
class SheetReading {

    private static final Pattern COPIES = Pattern.compile("(.*\\S)\\s+[x×X*]\\s*([0-9]{1,3})");

    /**
     * What is to be printed.
     *
     * @param first how many cells are used up
     */
    record Sheet(LabelGrid grid, int first, List<Label> labels) {}

    private final PieceCodes codes;
    private final LabelGrids grids;
    private final LabelAddress address;
    private final Fmt fmt;

    SheetReading(PieceCodes codes, LabelGrids grids, LabelAddress address, Fmt fmt) {
        this.codes = codes;
        this.grids = grids;
        this.address = address;
        this.fmt = fmt;
    }

    Optional<Sheet> read(SheetForm form, Errors errors, HttpServletRequest request) {
        Optional<KnownGrid> grid = grids.find(form.grid);
        if (grid.isEmpty()) {
            errors.rejectValue("grid", "labels.error.grid");
        }
        List<Label> labels = labels(form, errors, address.now(request));
        int first = first(form.first, grid.map(KnownGrid::grid).orElse(null), errors);
        if (!errors.hasErrors() && !LabelFile.canHold(grid.orElseThrow().grid(), labels)) {
            errors.rejectValue("grid", "labels.error.too-small");
        }
        return errors.hasErrors()
                ? Optional.empty()
                : Optional.of(new Sheet(grid.orElseThrow().grid(), first, labels));
    }

    /** Each code once for each copy. */
    static List<String> copies(String text) {
        List<String> all = new ArrayList<>();
        for (String line : CodeText.split(text)) {
            Matcher several = COPIES.matcher(line);
            boolean counted = several.matches();
            all.addAll(Collections.nCopies(
                    counted ? Integer.parseInt(several.group(2)) : 1, counted ? several.group(1) : line));
        }
        return all;
    }

    private List<Label> labels(SheetForm form, Errors errors, String to) {
        List<String> wanted = copies(form.codes);
        if (wanted.size() > PieceCodes.MOST) {
            errors.rejectValue("codes", "labels.error.too-many", new Object[] {PieceCodes.MOST}, null);
            return List.of();
        }
        PieceCodes.Read read = codes.read(wanted);
        if (!read.unknown().isEmpty()) {
            String unknown =
                    String.join(", ", read.unknown().stream().distinct().toList());
            errors.rejectValue("codes", "labels.error.unknown", new Object[] {unknown}, null);
        } else if (read.pieces().isEmpty()) {
            errors.rejectValue("codes", "labels.error.codes");
        }
        return read.pieces().stream().map(piece -> label(piece, form.price, to)).toList();
    }

    private Label label(PlacedPiece piece, boolean price, String to) {
        boolean asked = price && piece.priceMinor() != null;
        return new Label(
                piece.code(),
                piece.title(),
                asked ? fmt.money(piece.priceMinor()) : "",
                LabelAddress.scanned(to, piece.code()));
    }

    private static int first(String typed, @Nullable LabelGrid grid, Errors errors) {
        int last = grid == null ? LabelGrid.MOST_CELLS : grid.size();
        if (!typed.matches("[0-9]{1,3}") || Integer.parseInt(typed) < 1 || Integer.parseInt(typed) > last) {
            errors.rejectValue("first", "labels.error.first");
            return 0;
        }
        return Integer.parseInt(typed) - 1;
    }
}
