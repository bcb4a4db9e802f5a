package patinary;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the back office, or does one errand and ends. */
@SpringBootApplication
public class Patinary {

    private static final int WRONG_USE = 2;

    public static void main(String[] arguments) {
        try {
            start(CommandLine.parse(arguments));
        } catch (CommandLine.WrongUse wrong) {
            System.err.println(wrong.getMessage());
            System.err.println("Ask for help with --help.");
            System.exit(WRONG_USE);
        }
    }

    private static void start(CommandLine line) {
        String[] settings = line.settings().toArray(String[]::new);
        switch (line.command()) {
            case HELP -> System.out.print(CommandLine.HELP);
            case SERVE, HTTPS -> SpringApplication.run(Patinary.class, settings);
            case DEMO -> new Demonstration(settings).serve();
            case LOAD, EXPORT, CHECK -> System.exit(new Errand(line).run());
        }
    }
}
