package patinary;

import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.WebApplicationType;
import org.springframework.context.ConfigurableApplicationContext;
import patinary.exchange.Errands;

/** Does one thing with the shop's data and ends; no web server is started. */
final class Errand {

    private static final int FAILED = 1;
    private static final String IN_USE = "90020";

    private final CommandLine line;

    Errand(CommandLine line) {
        this.line = line;
    }

    /** @return what the program ends with */
    int run() {
        SpringApplication program = new SpringApplication(Patinary.class);
        program.setWebApplicationType(WebApplicationType.NONE);
        // Only what the errand needs is made: no pages, no doors.
        program.setLazyInitialization(true);
        program.setDefaultProperties(quietly());
        try (ConfigurableApplicationContext context =
                program.run(line.settings().toArray(String[]::new))) {
            Errands errands = context.getBean(Errands.class);
            boolean well = switch (line.command()) {
                case LOAD -> errands.load(line.word());
                case EXPORT -> errands.export(line.word());
                case WAY_IN -> errands.wayIn(line.word());
                default -> errands.check();
            };
            return well ? 0 : FAILED;
        } catch (RuntimeException failed) {
            System.err.println(reason(failed));
            return FAILED;
        }
    }

    private static Map<String, Object> quietly() {
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("spring.main.banner-mode", "off");
        settings.put("spring.main.log-startup-info", "false");
        settings.put("logging.level.root", "warn");
        settings.put("logging.level.org.springframework.boot.SpringApplication", "off");
        settings.put("logging.level.org.springframework.context", "error");
        settings.put("logging.level.org.hibernate", "error");
        settings.put("logging.level.com.zaxxer.hikari", "off");
        return settings;
    }

    private static String reason(Throwable failed) {
        Throwable cause = failed;
        while (cause.getCause() != null && cause.getCause() != cause) {
            cause = cause.getCause();
        }
        boolean inUse = String.valueOf(cause.getMessage()).contains(IN_USE);
        return inUse
                ? "The shop's data is in use: end the running program first, or use its own page."
                : "It did not work: " + cause.getMessage();
    }
}
