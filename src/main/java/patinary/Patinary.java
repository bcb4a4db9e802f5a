package patinary;

import java.io.IOException;
import java.nio.file.Path;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import patinary.invented.InventedShop;

/** Starts the back office, or does one errand and ends. */
@SpringBootApplication
public class Patinary {

    private static final int FAILED = 1;
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
            case SERVE, HTTPS -> server().run(settings);
            case DEMO -> new Demonstration(settings).serve();
            case INVENT -> System.exit(invent(line));
            case PROVE -> System.exit(new ThrowAwayShop(line).prove());
            case LOAD, EXPORT, CHECK, WAY_IN, BACKUP, REHEARSE -> System.exit(new Errand(line).run());
        }
    }

    /**
     * The program with its pages. What no page has asked for yet is not made: that is most of it when the first page is answered. What has
     * to be there from the beginning is marked so. The tests make all of it at once, so that nothing fails to be made only when it is asked for.
     */
    static SpringApplication server() {
        SpringApplication program = new SpringApplication(Patinary.class);
        program.setLazyInitialization(true);
        return program;
    }

    /** Needs no database and no shop, so nothing of the program is started. */
    private static int invent(CommandLine line) {
        try {
            new InventedShop(line.seed(), line.pieces()).write(Path.of(line.word()));
            System.out.printf("An invented shop of %,d pieces is in %s.%n", line.pieces(), line.word());
            return 0;
        } catch (IOException | IllegalArgumentException failed) {
            System.err.println("It did not work: " + failed.getMessage());
            return FAILED;
        }
    }
}
