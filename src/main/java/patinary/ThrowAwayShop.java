package patinary;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.util.FileSystemUtils;
import patinary.backup.ProofErrand;

/** Makes a shop of an archive in a folder of its own, which goes when it is proven; no other shop is needed or touched. */
final class ThrowAwayShop {

    private final CommandLine line;

    ThrowAwayShop(CommandLine line) {
        this.line = line;
    }

    /** @return what the program ends with */
    int prove() {
        try {
            Path folder = Files.createTempDirectory("patinary-proof");
            try (ConfigurableApplicationContext context = Errand.start(settings(folder))) {
                return Errand.tell(context.getBean(ProofErrand.class).prove(line.word())) ? 0 : 1;
            } finally {
                FileSystemUtils.deleteRecursively(folder);
            }
        } catch (IOException | RuntimeException failed) {
            System.err.println(Errand.reason(failed));
            return 1;
        }
    }

    /** Whatever database the surroundings name, nothing is loaded into a real one. */
    private List<String> settings(Path folder) {
        List<String> settings = new ArrayList<>(line.settings());
        settings.removeIf(
                setting -> setting.startsWith("--patinary.data=") || setting.startsWith("--spring.datasource."));
        settings.add("--patinary.data=" + folder);
        settings.addAll(embedded(folder));
        return settings;
    }

    /** The settings of an embedded database in this folder. */
    static List<String> embedded(Path folder) {
        return List.of(
                "--spring.datasource.url=jdbc:h2:file:" + folder + "/shop;WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE",
                "--spring.datasource.username=sa",
                "--spring.datasource.password=");
    }
}
