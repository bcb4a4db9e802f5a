package patinary.history;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.exchange.Content;
import patinary.ledger.Batches;

/**
 * The one way in which words of the history change: somebody who is erased from the shop goes from here too. Who changed what
 * and when stays.
 */
@Service
@Transactional
public class Erasure {

    /** Says what is to stand in place of what stands there; the same where nothing is to be erased. */
    public interface Rewriting {

        /** @param kind the table of the shop archive that the subject is a row of */
        Content content(String kind, UUID subject, Content content);

        /** The name of a file. */
        String text(String text);
    }

    /** Looks at what was kept of a subject. */
    @FunctionalInterface
    public interface Looking {

        /** @param kind the table of the shop archive that the subject is a row of */
        void at(String kind, UUID subject, Content content);
    }

    private static final int AT_ONCE = 200;

    private record Kept(
            UUID id,
            String kind,
            UUID subjectId,
            String fileName,
            @Nullable String contentBefore,
            @Nullable String contentAfter) {}

    private final JdbcClient jdbc;

    Erasure(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Looks at everything that was kept. */
    public void look(Looking looking) {
        each(kept -> {
            if (kept.contentBefore() != null) {
                looking.at(kept.kind(), kept.subjectId(), Content.of(kept.contentBefore()));
            }
            if (kept.contentAfter() != null) {
                looking.at(kept.kind(), kept.subjectId(), Content.of(kept.contentAfter()));
            }
        });
    }

    /** Rewrites everything that was kept. */
    public void rewrite(Rewriting rewriting) {
        each(kept -> {
            String before = rewritten(kept, kept.contentBefore(), rewriting);
            String after = rewritten(kept, kept.contentAfter(), rewriting);
            String file = rewriting.text(kept.fileName());
            if (!Objects.equals(before, kept.contentBefore())
                    || !Objects.equals(after, kept.contentAfter())
                    || !file.equals(kept.fileName())) {
                jdbc.sql("update history set content_before = ?, content_after = ?, file_name = ? where id = ?")
                        .params(before, after, file, kept.id())
                        .update();
            }
        });
    }

    private static @Nullable String rewritten(Kept kept, @Nullable String text, Rewriting rewriting) {
        return text == null
                ? null
                : rewriting
                        .content(kept.kind(), kept.subjectId(), Content.of(text))
                        .text();
    }

    private void each(java.util.function.Consumer<Kept> deed) {
        List<UUID> ids =
                jdbc.sql("select id from history order by id").query(UUID.class).list();
        for (List<UUID> some : Batches.of(ids, AT_ONCE)) {
            jdbc.sql(
                            "select id, kind, subject_id, file_name, content_before, content_after from history where id in (:ids)")
                    .param("ids", some)
                    .query(Kept.class)
                    .list()
                    .forEach(deed);
        }
    }
}
