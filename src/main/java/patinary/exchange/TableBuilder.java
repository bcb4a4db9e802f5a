package patinary.exchange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import patinary.exchange.Column.Limit;
import patinary.ledger.DocumentKind;

/** Lets the list of tables read like a list. The modifiers speak of the column named last. */
final class TableBuilder {

    private final String name;
    private final List<Column> columns = new ArrayList<>();
    private final List<List<String>> keys = new ArrayList<>();
    private final List<ArchiveTable.Within> within = new ArrayList<>();
    private final List<Rule> rules = new ArrayList<>();
    private @Nullable DocumentKind kind;
    private @Nullable String document;

    private TableBuilder(String name) {
        this.name = name;
    }

    /** A list of things that are told apart by their names. */
    static TableBuilder named(String table, int size) {
        return table(table).key("id").key("name").id("id").name("name", size);
    }

    /** A document by which an amount goes through one money place. */
    static ArchiveTable paid(TableBuilder document) {
        return document.ref("place_id", "money_place")
                .amount("amount")
                .aboveZero()
                .done();
    }

    /** Something there is; what is named first is its key. */
    static TableBuilder table(String name) {
        return new TableBuilder(name);
    }

    /** A kind of document. */
    static TableBuilder document(String name, DocumentKind kind) {
        TableBuilder builder = new TableBuilder(name).id("id").key("id");
        builder.kind = kind;
        builder.document = "id";
        builder.columns.add(Column.of("date", "doc_date", Type.DATE));
        return builder.text("note", 2000).column("recorded_at", Type.MOMENT);
    }

    /** Rows that belong to a document; its id and the given columns are their key. */
    static TableBuilder linesOf(String parent, String name) {
        TableBuilder builder = new TableBuilder(name).ref(parent + "_id", parent);
        builder.document = parent + "_id";
        return builder;
    }

    TableBuilder key(String... names) {
        keys.add(Arrays.asList(names));
        return this;
    }

    TableBuilder id(String column) {
        return column(column, Type.ID);
    }

    /** The id of a row in one of the tables. */
    TableBuilder ref(String column, String... tables) {
        return id(column).last(last().referring(List.of(tables)));
    }

    /** A text that may be empty. */
    TableBuilder text(String column, int size) {
        return name(column, size).last(last().mayBeBlank());
    }

    /** A text that says something. */
    TableBuilder name(String column, int size) {
        return column(column, Type.TEXT).last(last().sized(size, 0));
    }

    TableBuilder amount(String column) {
        columns.add(Column.of(column, column + "_minor", Type.AMOUNT));
        return this;
    }

    TableBuilder decimal(String column, int digits, int scale) {
        return column(column, Type.DECIMAL).last(last().sized(digits, scale));
    }

    /** A quantity as the database keeps all of them. */
    TableBuilder quantity(String column) {
        return decimal(column, 16, 14).aboveZero();
    }

    TableBuilder weight() {
        return decimal("weight", 16, 14).zeroOrMore();
    }

    TableBuilder percent(String column) {
        return column(column, Type.PERCENT).last(last().sized(5, 4));
    }

    TableBuilder line() {
        return column("line", Type.WHOLE).aboveZero();
    }

    TableBuilder words(String column, String... words) {
        return column(column, Type.WORD).last(last().wordsOf(List.of(words)));
    }

    TableBuilder column(String column, Type type) {
        columns.add(Column.of(column, column, type));
        return this;
    }

    TableBuilder column(String column, String field, Type type) {
        columns.add(Column.of(column, field, type));
        return this;
    }

    TableBuilder optional() {
        return last(last().optional());
    }

    /** The column came after the first release: an archive of before lacks it, which is the same as empty cells. */
    TableBuilder later() {
        return last(last().cameLater());
    }

    TableBuilder aboveZero() {
        return last(last().with(Limit.ABOVE_ZERO));
    }

    TableBuilder zeroOrMore() {
        return last(last().with(Limit.ZERO_OR_MORE));
    }

    /** The given columns name a row of another table by its key. */
    TableBuilder within(String table, String... names) {
        within.add(new ArchiveTable.Within(table, List.of(names)));
        return this;
    }

    TableBuilder rule(Rule rule) {
        rules.add(rule);
        return this;
    }

    ArchiveTable done() {
        return new ArchiveTable(
                name, kind, document, List.copyOf(columns), List.copyOf(keys), List.copyOf(within), List.copyOf(rules));
    }

    private Column last() {
        return columns.get(columns.size() - 1);
    }

    private TableBuilder last(Column column) {
        columns.set(columns.size() - 1, column);
        return this;
    }
}
