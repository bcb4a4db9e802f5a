package patinary.durable;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.h2.jdbcx.JdbcDataSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;

class DurableStoreTest {

    @TempDir
    private Path folder;

    @Test
    void refusesAStoreThatAnswersBeforeItWrites() {
        assertThatThrownBy(() -> check("")).hasMessageContaining("WRITE_DELAY");
        assertThatThrownBy(() -> check(";WRITE_DELAY=500")).hasMessageContaining("WRITE_DELAY");
    }

    @Test
    void takesAStoreThatWritesFirst() {
        assertThatCode(() -> check(";WRITE_DELAY=0")).doesNotThrowAnyException();
    }

    private void check(String setting) throws Exception {
        JdbcDataSource store = new JdbcDataSource();
        store.setURL("jdbc:h2:file:" + folder.resolve("shop" + setting.hashCode()) + setting);
        store.setUser("sa");
        store.setPassword("");
        new DurableStore(store, JdbcClient.create(store)).afterPropertiesSet();
    }
}
