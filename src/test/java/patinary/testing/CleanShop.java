package patinary.testing;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.platform.commons.support.AnnotationSupport;
import org.springframework.context.ApplicationContext;
import org.springframework.dao.PessimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.junit.jupiter.SpringExtension;
import patinary.durable.Engine;
import patinary.ledger.Turn;

/**
 * Empties every table before each test method. Tables that the migrations filled keep their rows: what is there before
 * the first test is reference data.
 */
public final class CleanShop implements BeforeEachCallback {

    private static final int TRIES = 5;

    /** By the address of the database: a second program on it may start when the first has filled it. */
    private static final Map<String, List<String>> EMPTIED = new ConcurrentHashMap<>();

    @Override
    public void beforeEach(ExtensionContext test) {
        ApplicationContext program = SpringExtension.getApplicationContext(test);
        empty(program);
        boolean open = AnnotationSupport.findAnnotation(test.getRequiredTestClass(), ShopTest.class)
                .map(ShopTest::open)
                .orElse(true);
        if (open) {
            InventedShop.open(program);
        }
    }

    /** Empties every table, as before a test: for what is taken out of a shop and brought into another. */
    public static void empty(ApplicationContext program) {
        JdbcClient jdbc = program.getBean(JdbcClient.class);
        String address = program.getEnvironment().getRequiredProperty("spring.datasource.url");
        Turn turn = program.getBean(Turn.class);
        Engine engine = engine(program);
        List<String> tables = EMPTIED.computeIfAbsent(address, first -> tablesWithoutReferenceData(jdbc));
        for (int tries = 1; true; tries++) {
            try {
                // A change that a browser of the test before began is waited for; what was kept of that shop is let go
                // of after.
                turn.take();
                empty(jdbc, tables, engine);
                turn.take();
                return;
            } catch (PessimisticLockingFailureException lateQuestion) {
                // A browser of the test before may have asked for something that is only now answered.
                if (tries == TRIES) {
                    throw lateQuestion;
                }
            }
        }
    }

    /** The invented shop as it is when a test starts. */
    public static void afresh(ApplicationContext program) {
        empty(program);
        InventedShop.open(program);
    }

    private static List<String> tablesWithoutReferenceData(JdbcClient jdbc) {
        List<String> tables = jdbc.sql("""
                        select lower(table_name) from information_schema.tables
                        where lower(table_schema) = 'public' and table_type = 'BASE TABLE'
                          and lower(table_name) <> 'flyway_schema_history'
                        order by 1
                        """).query(String.class).list();
        List<String> emptied = new ArrayList<>();
        for (String table : tables) {
            boolean filled =
                    jdbc.sql("select count(*) from " + table).query(Long.class).single() > 0;
            // What the program itself writes at the start is no reference data.
            if (!filled || table.startsWith("spring_session")) {
                emptied.add(table);
            }
        }
        return emptied;
    }

    private static void empty(JdbcClient jdbc, List<String> tables, Engine engine) {
        // A test fills a few of the many tables, and to ask which is much cheaper than to empty all of them.
        List<String> filled = jdbc.sql(tables.stream()
                        .map("select '%1$s' where exists (select 1 from %1$s)"::formatted)
                        .collect(Collectors.joining(" union all ")))
                .query(String.class)
                .list();
        if (filled.isEmpty()) {
            return;
        }
        if (engine == Engine.H2) {
            truncate(jdbc, filled);
        } else {
            // One statement is one transaction; foreign keys are triggers there, and let go of with the others until
            // its end.
            jdbc.sql(filled.stream()
                            .map(table -> "delete from " + table)
                            .collect(Collectors.joining("; ", "set local session_replication_role = replica; ", "")))
                    .update();
        }
    }

    private static Engine engine(ApplicationContext program) {
        try {
            return Engine.of(program.getBean(DataSource.class));
        } catch (SQLException gone) {
            throw new IllegalStateException(gone);
        }
    }

    private static void truncate(JdbcClient jdbc, List<String> tables) {
        jdbc.sql("set referential_integrity false").update();
        try {
            tables.forEach(table -> jdbc.sql("truncate table " + table).update());
        } finally {
            jdbc.sql("set referential_integrity true").update();
        }
    }
}
