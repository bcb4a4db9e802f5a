package patinary.labels;

import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import patinary.reference.ReferenceFile;

/** The grids in {@code db/reference/label-grids.csv}: layouts in common use, described by their measures alone. */
final class BuiltInGrids {

    private BuiltInGrids() {}

    /** @throws IllegalStateException where the file is not there */
    static List<KnownGrid> load() {
        return ReferenceFile.rows("label-grids").stream()
                .map(BuiltInGrids::grid)
                .toList();
    }

    private static KnownGrid grid(CSVRecord row) {
        LabelGrid grid = new LabelGrid(
                Paper.valueOf(row.get("paper")),
                Integer.parseInt(row.get("rows")),
                Integer.parseInt(row.get("columns")),
                new BigDecimal(row.get("left_mm")),
                new BigDecimal(row.get("top_mm")),
                new BigDecimal(row.get("width_mm")),
                new BigDecimal(row.get("height_mm")),
                new BigDecimal(row.get("across_mm")),
                new BigDecimal(row.get("down_mm")));
        return new KnownGrid(row.get("key"), "", grid);
    }
}
