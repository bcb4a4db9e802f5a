package patinary.whole;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.TimeUnit;

/**
 * For what part of the time somebody has the turn of the books: asks the server every few milliseconds whether a transaction
 * has written to their one row and not ended. Whoever only waits for it waits for one who has it, so waiting counts as much as having.
 */
final class TurnWatch implements AutoCloseable {

    private static final String TAKEN = "select count(*) from pg_locks where locktype = 'relation' and granted"
            + " and relation = 'books'::regclass and mode = 'RowExclusiveLock'";
    private static final int PAUSE = 3;

    private final Connection server;
    private final Thread thread = new Thread(this::look);
    private final long begun = System.nanoTime();
    private volatile boolean over;
    private int asked;
    private int taken;

    TurnWatch(String url) throws SQLException {
        server = DriverManager.getConnection(url, "postgres", "");
        thread.start();
    }

    private void look() {
        try (Statement statement = server.createStatement()) {
            while (!over) {
                try (ResultSet rows = statement.executeQuery(TAKEN)) {
                    rows.next();
                    asked++;
                    taken += rows.getInt(1) > 0 ? 1 : 0;
                }
                TimeUnit.MILLISECONDS.sleep(PAUSE);
            }
        } catch (SQLException failed) {
            throw new IllegalStateException(failed);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** What was seen. @param seconds since the watch began @param share of them in which the turn was taken, from 0 to 1 */
    record Seen(double seconds, double share) {

        /** @return the milliseconds of the turn that each of so many changes had */
        double millisFor(int changes) {
            return changes == 0 ? 0 : seconds * share / changes * TimeUnit.SECONDS.toMillis(1);
        }
    }

    /** Ends the watch. */
    Seen end() throws InterruptedException {
        double seconds = (System.nanoTime() - begun) / 1e9;
        over = true;
        thread.join();
        return new Seen(seconds, asked == 0 ? 0 : (double) taken / asked);
    }

    @Override
    public void close() throws SQLException {
        over = true;
        server.close();
    }
}
