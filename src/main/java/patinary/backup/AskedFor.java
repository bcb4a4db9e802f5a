package patinary.backup;

import java.io.IOException;
import java.nio.file.Path;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.scheduling.annotation.EnableScheduling;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;

/** The running program looks into its {@link AskBox}. */
@Component
@EnableScheduling
@ConditionalOnWebApplication
class AskedFor {

    private final AskBox box;
    private final BackupErrands errands;

    AskedFor(@Value("${patinary.data:./data}") Path data, BackupErrands errands) {
        this.box = new AskBox(data);
        this.errands = errands;
    }

    @Scheduled(fixedDelayString = "PT2S")
    void look() throws IOException {
        box.look(ask -> errands.answer(ask.what(), ask.file()));
    }
}
