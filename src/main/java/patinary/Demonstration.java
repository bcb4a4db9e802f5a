package patinary;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.util.FileSystemUtils;
import patinary.exchange.DemoData;

/** Serves the invented shop from a throw-away folder, which goes when the program ends. */
final class Demonstration {

    private final List<String> settings;

    Demonstration(String... settings) {
        this.settings = new ArrayList<>(Arrays.asList(settings));
    }

    void serve() {
        Path folder = folder();
        SpringApplication.getShutdownHandlers().add(() -> remove(folder));
        // Whatever database the surroundings name, the invented shop never goes into a real one.
        settings.add("--patinary.data=" + folder);
        settings.addAll(ThrowAwayShop.embedded(folder));
        settings.add("--" + DemoData.SETTING + "=true");
        SpringApplication program = Patinary.server();
        // Its password is known to everybody: by default only this machine may reach it.
        program.setDefaultProperties(Map.of("server.address", "127.0.0.1"));
        ConfigurableApplicationContext running = program.run(settings.toArray(String[]::new));
        System.out.printf(
                "%nThe invented shop is open: http://localhost:%s/%n  name      %s%n  password  %s%n"
                        + "It is thrown away when you end the program (Ctrl-C).%n%n",
                running.getEnvironment().getProperty("local.server.port"), DemoData.OWNER, DemoData.PASSWORD);
    }

    private static Path folder() {
        try {
            return Files.createTempDirectory("patinary-demo");
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static void remove(Path folder) {
        try {
            FileSystemUtils.deleteRecursively(folder);
        } catch (IOException failed) {
            System.err.println("The folder " + folder + " could not be removed: " + failed.getMessage());
        }
    }
}
