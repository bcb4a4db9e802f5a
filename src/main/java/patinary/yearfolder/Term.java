package patinary.yearfolder;

import java.util.Map;
import java.util.stream.Collectors;

/** One term of a line's amount, added or taken off. */
sealed interface Term {

    boolean minus();

    /** The term in words, without its sign. */
    String words();

    /** The amount of another meaning. */
    record Meaning(boolean minus, String meaning) implements Term {
        @Override
        public String words() {
            return meaning;
        }
    }

    /** The sum of a column of a table, over the rows whose cells are as said; over all rows where nothing is said. */
    record Rows(boolean minus, String table, String column, Map<String, String> where) implements Term {
        @Override
        public String words() {
            return table
                    + (where.isEmpty()
                            ? ""
                            : where.entrySet().stream()
                                    .map(cell -> cell.getKey() + " " + cell.getValue())
                                    .sorted()
                                    .collect(Collectors.joining(", ", " (", ")")));
        }
    }

    /** The sum of a column of a table, but no more than the amount of another meaning, and never below zero. */
    record AtMost(boolean minus, Rows rows, String meaning) implements Term {
        @Override
        public String words() {
            return rows.words() + " but no more than " + meaning;
        }
    }

    /** All that is mapped to a line of the part "expenses". */
    record AllExpenses(boolean minus) implements Term {
        @Override
        public String words() {
            return "all expenses";
        }
    }
}
