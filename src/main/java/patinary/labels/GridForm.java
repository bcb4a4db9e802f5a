package patinary.labels;

import java.math.BigDecimal;

/** A grid of her own, as typed. */
class GridForm {

    public long version;
    public String name = "";
    public String paper = Paper.LETTER.name();
    public String columns = "1";
    public String rows = "1";
    public String left = "0";
    public String top = "0";
    public String width = "";
    public String height = "";
    public String across = "0";
    public String down = "0";

    static GridForm of(KnownGrid known) {
        LabelGrid grid = known.grid();
        GridForm form = new GridForm();
        form.name = known.name();
        form.paper = grid.paper().name();
        form.columns = String.valueOf(grid.columns());
        form.rows = String.valueOf(grid.rows());
        form.left = plain(grid.left());
        form.top = plain(grid.top());
        form.width = plain(grid.width());
        form.height = plain(grid.height());
        form.across = plain(grid.across());
        form.down = plain(grid.down());
        return form;
    }

    private static String plain(BigDecimal length) {
        return length.signum() == 0 ? "0" : length.stripTrailingZeros().toPlainString();
    }
}
