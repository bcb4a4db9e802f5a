package patinary.shop;

import java.sql.SQLException;
import javax.sql.DataSource;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.session.config.SessionRepositoryCustomizer;
import org.springframework.session.jdbc.JdbcIndexedSessionRepository;
import patinary.durable.Engine;

/**
 * Two requests of one person may store the same thing in her signed-in state at the same moment. The second one then
 * takes the first one's place, in each database's own words, instead of failing. When she was last seen is written once a minute
 * and not with each page: a page that only reads writes nothing.
 */
@Configuration(proxyBeanMethods = false)
class SessionStore {

    private static final String COLUMNS =
            "%TABLE_NAME%_ATTRIBUTES (SESSION_PRIMARY_ID, ATTRIBUTE_NAME, ATTRIBUTE_BYTES) ";
    private static final String ON_H2 =
            "MERGE INTO " + COLUMNS + "KEY (SESSION_PRIMARY_ID, ATTRIBUTE_NAME) VALUES (?, ?, ?)";
    private static final String ON_POSTGRESQL = "INSERT INTO " + COLUMNS + "VALUES (?, ?, ?) "
            + "ON CONFLICT (SESSION_PRIMARY_ID, ATTRIBUTE_NAME) DO UPDATE SET ATTRIBUTE_BYTES = EXCLUDED.ATTRIBUTE_BYTES";

    /** What the library gives, in its order: id, last seen, how long it is good for, until when, who, and the key of the row. */
    private static final String SEEN_ON_POSTGRESQL = """
            MERGE INTO %TABLE_NAME% S
            USING (SELECT CAST(? AS CHAR(36)) AS SESSION_ID, CAST(? AS BIGINT) AS LAST_ACCESS_TIME,
                          CAST(? AS INTEGER) AS MAX_INACTIVE_INTERVAL, CAST(? AS BIGINT) AS EXPIRY_TIME,
                          CAST(? AS VARCHAR(100)) AS PRINCIPAL_NAME, CAST(? AS CHAR(36)) AS PRIMARY_ID) N
            ON S.PRIMARY_ID = N.PRIMARY_ID
            WHEN MATCHED AND (N.LAST_ACCESS_TIME >= S.LAST_ACCESS_TIME + 60000
                              OR N.SESSION_ID <> S.SESSION_ID
                              OR N.MAX_INACTIVE_INTERVAL <> S.MAX_INACTIVE_INTERVAL
                              OR N.PRINCIPAL_NAME IS DISTINCT FROM S.PRINCIPAL_NAME)
            THEN UPDATE SET SESSION_ID = N.SESSION_ID, LAST_ACCESS_TIME = N.LAST_ACCESS_TIME,
                            MAX_INACTIVE_INTERVAL = N.MAX_INACTIVE_INTERVAL, EXPIRY_TIME = N.EXPIRY_TIME,
                            PRINCIPAL_NAME = N.PRINCIPAL_NAME
            """;

    /** The same. H2 locks the row that a MERGE finds, updated or not, and stores that; it knows numbered values, so an UPDATE does here. */
    private static final String SEEN_ON_H2 = """
            UPDATE %TABLE_NAME%
            SET SESSION_ID = ?1, LAST_ACCESS_TIME = ?2, MAX_INACTIVE_INTERVAL = ?3, EXPIRY_TIME = ?4, PRINCIPAL_NAME = ?5
            WHERE PRIMARY_ID = ?6
              AND (?2 >= LAST_ACCESS_TIME + 60000 OR ?1 <> SESSION_ID OR ?3 <> MAX_INACTIVE_INTERVAL
                   OR ?5 IS DISTINCT FROM PRINCIPAL_NAME)
            """;

    @Bean
    SessionRepositoryCustomizer<JdbcIndexedSessionRepository> storing(DataSource store) throws SQLException {
        boolean h2 = Engine.of(store) == Engine.H2;
        return repository -> {
            repository.setCreateSessionAttributeQuery(h2 ? ON_H2 : ON_POSTGRESQL);
            repository.setUpdateSessionQuery(h2 ? SEEN_ON_H2 : SEEN_ON_POSTGRESQL);
        };
    }
}
