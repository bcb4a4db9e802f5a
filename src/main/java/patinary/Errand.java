package patinary;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.WebApplicationType;
import org.springframework.context.ConfigurableApplicationContext;
import patinary.backup.AskBox;
import patinary.backup.BackupErrands;
import patinary.exchange.Errands;

/** Does one thing with the shop's data and ends; no web server is started. */
final class Errand {

    private static final int FAILED = 1;
    /** H2 refuses a database that another process has open. */
    private static final int IN_USE = 90_020;
    /** A running program looks every two seconds; half a minute is enough for a slow one. */
    private static final int LOOKS = 120;

    private final CommandLine line;

    Errand(CommandLine line) {
        this.line = line;
    }

    /** @return what the program ends with */
    int run() {
        try (ConfigurableApplicationContext context = start(line.settings())) {
            return does(context) ? 0 : FAILED;
        } catch (RuntimeException failed) {
            if (isInUse(failed) && mayBeAskedFor()) {
                return askTheRunningProgram() ? 0 : FAILED;
            }
            System.err.println(reason(failed));
            return root(failed) instanceof NewerData ? NewerData.EXIT : FAILED;
        }
    }

    private boolean does(ConfigurableApplicationContext context) {
        Errands errands = context.getBean(Errands.class);
        return switch (line.command()) {
            case LOAD -> errands.load(line.word());
            case EXPORT -> errands.export(line.word());
            case WAY_IN -> errands.wayIn(line.word());
            case BACKUP, REHEARSE ->
                tell(context.getBean(BackupErrands.class).answer(line.command().written(), file()));
            default -> errands.check();
        };
    }

    private boolean mayBeAskedFor() {
        return line.command() == CommandLine.Command.BACKUP || line.command() == CommandLine.Command.REHEARSE;
    }

    /** The one program that may read the database does it instead. */
    private boolean askTheRunningProgram() {
        System.err.println("The shop is open: asking the running program.");
        try {
            Optional<AskBox.Answer> answer =
                    new AskBox(line.data()).ask(line.command().written(), file(), LOOKS);
            if (answer.isPresent()) {
                return tell(answer.get());
            }
            System.err.println("It does not answer. Is it an older one, or is its data folder another?");
        } catch (IOException failed) {
            System.err.println("It could not be asked: " + failed.getMessage());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return false;
    }

    static boolean tell(AskBox.Answer answer) {
        (answer.good() ? System.out : System.err).println(answer.told());
        return answer.good();
    }

    /** The running program may have been started elsewhere: it is told the whole path. */
    private String file() {
        return line.word().isEmpty()
                ? ""
                : Path.of(line.word()).toAbsolutePath().normalize().toString();
    }

    /** Starts the program without pages and doors: only what is asked for is made. */
    static ConfigurableApplicationContext start(List<String> settings) {
        SpringApplication program = new SpringApplication(Patinary.class);
        program.setWebApplicationType(WebApplicationType.NONE);
        program.setLazyInitialization(true);
        program.setDefaultProperties(quietly());
        return program.run(settings.toArray(String[]::new));
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

    static String reason(Throwable failed) {
        return isInUse(failed)
                ? "The shop's data is in use: end the running program first, or use its own page."
                : "It did not work: " + root(failed).getMessage();
    }

    private static boolean isInUse(Throwable failed) {
        for (Throwable cause = failed; cause != null && cause != cause.getCause(); cause = cause.getCause()) {
            if (cause instanceof SQLException refused && refused.getErrorCode() == IN_USE) {
                return true;
            }
        }
        return false;
    }

    private static Throwable root(Throwable failed) {
        Throwable cause = failed;
        while (cause.getCause() != null && cause.getCause() != cause) {
            cause = cause.getCause();
        }
        return cause;
    }
}
