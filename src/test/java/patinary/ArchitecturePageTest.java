package patinary;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The table of modules in {@code docs/architecture.md} says what the packages say of themselves. {@code
 * -Dpatinary.pages.renew=true} writes it anew.
 */
class ArchitecturePageTest {

    private static final Path PAGE = Path.of("docs", "architecture.md");
    private static final Path SOURCES = Path.of("src", "main", "java", "patinary");
    private static final String HEAD = "| package | what lives there | may depend on |\n|---|---|---|\n";
    private static final Pattern TABLE = Pattern.compile(Pattern.quote(HEAD) + "(?:\\|.*\n)*");
    private static final Pattern ABOUT = Pattern.compile("/\\*\\*(.*?)\\*/", Pattern.DOTALL);
    private static final Pattern MAY = Pattern.compile("allowedDependencies\\s*=\\s*\\{([^}]*)}");

    /** @param may the packages that it may depend on */
    private record Module(String name, String about, List<String> may) {

        String row() {
            return "| `" + name + "` | " + about + " | " + (may.isEmpty() ? "nothing" : String.join(", ", may))
                    + " |\n";
        }
    }

    @Test
    void theTableOfModulesIsWhatThePackagesSay() throws IOException {
        String page = Files.readString(PAGE);
        String table =
                HEAD + String.join("", modules().stream().map(Module::row).toList());
        String renewed = TABLE.matcher(page).replaceFirst(Matcher.quoteReplacement(table));
        if (Boolean.getBoolean("patinary.pages.renew")) {
            Files.writeString(PAGE, renewed);
            page = renewed;
        }
        assertThat(page)
                .as("as the packages say; -Dpatinary.pages.renew=true writes it anew")
                .isEqualTo(renewed)
                .contains(table);
    }

    /** Those first that the others stand on. */
    private static List<Module> modules() throws IOException {
        Map<String, Module> modules = new TreeMap<>();
        try (Stream<Path> folders = Files.list(SOURCES)) {
            for (Path folder : folders.filter(Files::isDirectory).toList()) {
                Module module = module(folder);
                modules.put(module.name(), module);
            }
        }
        List<Module> inOrder = new ArrayList<>(modules.values());
        inOrder.sort(Comparator.<Module>comparingInt(module -> height(module, modules))
                .thenComparing(Module::name));
        return inOrder;
    }

    /** How many modules stand under each other beneath it. */
    private static int height(Module module, Map<String, Module> modules) {
        return module.may().stream()
                .mapToInt(below -> 1 + height(modules.get(below), modules))
                .max()
                .orElse(0);
    }

    private static Module module(Path folder) throws IOException {
        String source = Files.readString(folder.resolve("package-info.java"));
        Matcher about = ABOUT.matcher(source);
        Matcher may = MAY.matcher(source);
        assertThat(about.find() && may.find())
                .as("%s says what it is for and what it may depend on", folder)
                .isTrue();
        List<String> below = Stream.of(may.group(1).split(","))
                .map(name -> name.replaceAll("[\"\\s]", ""))
                .filter(name -> !name.isEmpty())
                .toList();
        return new Module(folder.getFileName().toString(), plain(about.group(1)), below);
    }

    private static String plain(String comment) {
        return comment.replaceAll("\n\\s*\\*", "\n")
                .replaceAll("\\{@link [\\w.]*?(\\w+)}", "`$1`")
                .replaceAll("\\{@code\\s+([^}]*)}", "`$1`")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
