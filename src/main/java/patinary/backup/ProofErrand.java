package patinary.backup;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Service;
import patinary.exchange.ArchiveProof;
import patinary.exchange.ArchiveProof.Proof;
import patinary.exchange.ArchiveRefused;
import patinary.web.Tongue;

/** The command that proves a backup in a throw-away shop, in which it must run; the shop itself is not touched. */
@Service
public class ProofErrand {

    /** Where the report goes, for the program that asked. */
    public static final String REPORT = "patinary.prove.report";

    private static final int SHOWN = 10;

    private final ArchiveProof proof;
    private final Words words;
    private final MessageSource messages;
    private final String report;

    ProofErrand(ArchiveProof proof, Words words, MessageSource messages, @Value("${" + REPORT + ":}") String report) {
        this.proof = proof;
        this.words = words;
        this.messages = messages;
        this.report = report;
    }

    /** Proves the file and says how it went. */
    public AskBox.Answer prove(String file) throws IOException {
        ProofReport told;
        try {
            Proof proven = proof.run(Path.of(file));
            told = new ProofReport(proven.isGood(), text(proven), proven.rows());
        } catch (ArchiveRefused refused) {
            told = new ProofReport(false, text(refused), Map.of());
        }
        if (!report.isEmpty()) {
            told.write(Path.of(report));
        }
        return new AskBox.Answer(told.good(), told.told());
    }

    private String text(Proof proven) {
        long rows = proven.rows().values().stream().mapToLong(Long::longValue).sum();
        StringBuilder text = new StringBuilder(
                proven.isGood()
                        ? words.of("proof.good", proven.shop(), rows, proven.photos())
                        : words.of("proof.bad", proven.shop()));
        add(text, "proof.different", proven.different());
        add(text, "proof.sums", proven.sums());
        if (proven.findings() > 0) {
            text.append('\n').append(words.of("proof.findings", proven.findings()));
        }
        if (proven.lost() > 0) {
            text.append('\n').append(words.of("proof.lost", proven.lost()));
        }
        if (!proven.sameCalculation()) {
            text.append('\n').append(words.of("proof.calculation"));
        }
        return text.toString();
    }

    private void add(StringBuilder text, String key, List<String> all) {
        if (!all.isEmpty()) {
            String shown = String.join("; ", all.subList(0, Math.min(SHOWN, all.size())));
            text.append('\n').append(words.of(key, all.size(), shown));
        }
    }

    private String text(ArchiveRefused refused) {
        StringBuilder text =
                new StringBuilder(words.of("proof.refused", refused.errors().size() + refused.more()));
        refused.errors().stream()
                .limit(SHOWN)
                .forEach(error -> text.append('\n')
                        .append(String.join(
                                " ",
                                error.file(),
                                error.line() > 0 ? String.valueOf(error.line()) : "",
                                error.column(),
                                messages.getMessage(
                                        error.message(), error.arguments().toArray(), Tongue.OF_FILES))));
        return text.toString();
    }
}
