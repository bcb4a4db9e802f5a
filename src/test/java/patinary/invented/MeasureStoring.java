package patinary.invented;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/**
 * The least that taking a shop in can take on a PostgreSQL: all rows of one that is there, the finished ones of the books and of the kept figures too, are
 * written by the server itself from one table into another, then their keys and indexes are made, and all is taken back. Nothing is read from a
 * file, checked, worked out or sent. {@code .ci/measure-storing URL USER PASSWORD} runs it.
 */
final class MeasureStoring {

    private static final String TABLES = """
            select table_name from information_schema.tables
            where table_schema = 'public' and table_type = 'BASE TABLE' order by 1""";

    /** Keys first, as the foreign ones rest on them. What is not null stands in the table's own line, and is not made anew. */
    private static final String CONSTRAINTS = """
            select format('alter table storing.%I add %s', rel.relname, replace(pg_get_constraintdef(con.oid), 'REFERENCES ', 'REFERENCES storing.'))
            from pg_constraint con
            join pg_class rel on rel.oid = con.conrelid
            where con.connamespace = 'public'::regnamespace and con.contype in ('p', 'u', 'f', 'c')
            order by case con.contype when 'p' then 1 when 'u' then 2 else 3 end, rel.relname""";

    private static final String INDEXES = """
            select replace(pg_get_indexdef(ind.indexrelid), ' ON public.', ' ON storing.')
            from pg_index ind
            join pg_class rel on rel.oid = ind.indrelid
            where rel.relnamespace = 'public'::regnamespace
              and not exists (select 1 from pg_constraint con where con.conindid = ind.indexrelid)""";

    private static final double SECOND = 1e9;

    private MeasureStoring() {}

    public static void main(String[] where) throws SQLException {
        try (Connection server = DriverManager.getConnection(where[0], where[1], where.length > 2 ? where[2] : "")) {
            server.setAutoCommit(false);
            long documents = Long.parseLong(asked(server, "select cast(count(*) as varchar) from document")
                    .get(0));
            List<String> tables = asked(server, TABLES);
            List<String> constraints = asked(server, CONSTRAINTS);
            List<String> indexes = asked(server, INDEXES);
            run(server, List.of("create schema storing"));
            double rows = run(
                    server,
                    tables.stream()
                            .map(table -> "create table storing.%1$s as table public.%1$s".formatted(table))
                            .toList());
            double keys = run(server, constraints);
            double more = run(server, indexes);
            server.rollback();
            System.out.printf(
                    "| rows of %d tables | %d keys and checks | %d indexes | all | documents | a second |%n|---|---|---|---|---|---|%n"
                            + "| %.1f s | %.1f s | %.1f s | %.1f s | %,d | %,.0f |%n",
                    tables.size(),
                    constraints.size(),
                    indexes.size(),
                    rows,
                    keys,
                    more,
                    rows + keys + more,
                    documents,
                    documents / (rows + keys + more));
        }
    }

    private static List<String> asked(Connection server, String query) throws SQLException {
        List<String> answers = new ArrayList<>();
        try (Statement statement = server.createStatement();
                ResultSet rows = statement.executeQuery(query)) {
            while (rows.next()) {
                answers.add(rows.getString(1));
            }
        }
        return answers;
    }

    /** @return the seconds that it took */
    private static double run(Connection server, List<String> statements) throws SQLException {
        long start = System.nanoTime();
        try (Statement statement = server.createStatement()) {
            for (String one : statements) {
                statement.execute(one);
            }
        }
        return (System.nanoTime() - start) / SECOND;
    }
}
