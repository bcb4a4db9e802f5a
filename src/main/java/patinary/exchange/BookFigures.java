package patinary.exchange;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.springframework.jdbc.core.JdbcTemplate;
import patinary.money.Amount;
import patinary.money.ShopCurrency;

/**
 * What the books say: the sum of each account in each calendar year. A backup has them beside the documents, from the
 * same moment; a shop that is made of it must come to the same sums by itself.
 */
record BookFigures(List<Figure> figures) {

    /**
     * One sum.
     *
     * @param year the calendar year of the postings
     * @param account the account's name
     * @param amount what the postings add to
     */
    record Figure(int year, String account, Amount amount) {}

    static final String FILE = "figures.csv";
    static final List<String> HEADER = List.of("year", "account", "amount");

    private static final String SUMS = """
            select extract(year from doc_date) as posted, account, sum(amount_minor) as total
            from posting group by extract(year from doc_date), account""";

    BookFigures {
        figures = figures.stream()
                .sorted(java.util.Comparator.comparingInt(Figure::year).thenComparing(Figure::account))
                .toList();
    }

    static BookFigures of(JdbcTemplate jdbc) {
        return new BookFigures(jdbc.query(
                SUMS,
                (row, number) ->
                        new Figure(row.getInt("posted"), row.getString("account"), Amount.of(row.getLong("total")))));
    }

    List<List<String>> lines(ShopCurrency currency) {
        return figures.stream()
                .map(figure ->
                        List.of(String.valueOf(figure.year()), figure.account(), currency.plain(figure.amount())))
                .toList();
    }

    /** The lines as an archive has them; empty where it has none, as one that was made by hand. */
    static List<List<String>> linesIn(ArchiveSource source) throws IOException {
        List<List<String>> lines = new ArrayList<>();
        if (source.names().contains(FILE)) {
            ErrorList errors = new ErrorList();
            new CsvFile(source, errors).read(FILE, HEADER, (line, cells) -> lines.add(cells));
            errors.refuseIfAny();
        }
        return lines;
    }
}
