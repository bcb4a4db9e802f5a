package patinary.shop;

import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.session.config.SessionRepositoryCustomizer;
import org.springframework.session.jdbc.JdbcIndexedSessionRepository;

/**
 * Two requests of one person may store the same thing in her signed-in state at the same moment. The second one then
 * takes the first one's place, in each database's own words, instead of failing.
 */
@Configuration(proxyBeanMethods = false)
class SessionStore {

    private static final String COLUMNS =
            "%TABLE_NAME%_ATTRIBUTES (SESSION_PRIMARY_ID, ATTRIBUTE_NAME, ATTRIBUTE_BYTES) ";
    private static final String ON_H2 =
            "MERGE INTO " + COLUMNS + "KEY (SESSION_PRIMARY_ID, ATTRIBUTE_NAME) VALUES (?, ?, ?)";
    private static final String ON_POSTGRESQL = "INSERT INTO " + COLUMNS + "VALUES (?, ?, ?) "
            + "ON CONFLICT (SESSION_PRIMARY_ID, ATTRIBUTE_NAME) DO UPDATE SET ATTRIBUTE_BYTES = EXCLUDED.ATTRIBUTE_BYTES";

    @Bean
    SessionRepositoryCustomizer<JdbcIndexedSessionRepository> lastOneCounts(DataSource store) throws SQLException {
        try (Connection connection = store.getConnection()) {
            boolean h2 = connection.getMetaData().getDatabaseProductName().equals("H2");
            return repository -> repository.setCreateSessionAttributeQuery(h2 ? ON_H2 : ON_POSTGRESQL);
        }
    }
}
