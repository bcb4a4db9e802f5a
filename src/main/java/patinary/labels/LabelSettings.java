package patinary.labels;

import java.util.Locale;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** What she chose for her labels and is to find again. */
@Repository
class LabelSettings {

    /** A choice and what holds before she makes it. */
    enum Name {
        /** Where labels lead: her shop's own address, or nothing. */
        ADDRESS
    }

    private final JdbcClient jdbc;

    LabelSettings(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What she chose, or {@code usual} before she did. */
    String read(Name name, String usual) {
        return jdbc.sql("select setting from label_setting where name = ?")
                .param(word(name))
                .query(String.class)
                .optional()
                .orElse(usual);
    }

    @Transactional
    public void keep(Name name, String setting) {
        int changed = jdbc.sql("update label_setting set setting = ? where name = ?")
                .params(setting, word(name))
                .update();
        if (changed == 0) {
            jdbc.sql("insert into label_setting (name, setting) values (?, ?)")
                    .params(word(name), setting)
                    .update();
        }
    }

    private static String word(Name name) {
        return name.name().toLowerCase(Locale.ROOT);
    }
}
