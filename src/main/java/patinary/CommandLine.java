package patinary;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What was asked for on the command line.
 *
 * @param command what to do
 * @param word the archive to load or to write, or the name of a person, or empty
 * @param settings the options as the program's settings, {@code --name=value}
 */
record CommandLine(Command command, String word, List<String> settings) {

    enum Command {
        SERVE,
        HTTPS,
        LOAD,
        EXPORT,
        CHECK,
        WAY_IN,
        BACKUP,
        REHEARSE,
        PROVE,
        DEMO,
        INVENT,
        HELP;

        boolean needsArchive() {
            return this == LOAD || this == EXPORT || this == INVENT || this == PROVE;
        }

        boolean takesWord() {
            return needsArchive() || this == WAY_IN || this == BACKUP || this == REHEARSE;
        }

        String written() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** The command line cannot be understood; the message says why. */
    static final class WrongUse extends Exception {

        private static final long serialVersionUID = 1L;

        WrongUse(String message) {
            super(message);
        }
    }

    static final String HELP = """
            Patinary, the back office of a one-person upcycling shop

              java -jar patinary.jar [COMMAND] [OPTIONS]

            Commands
              serve            open the shop in a browser (what happens without a command)
              https            the same, also encrypted for the phone; needs --names, see the page /trust
              load ARCHIVE     take a shop archive, a zip or a folder, into an empty shop
              export ARCHIVE   write the whole shop to a zip, or to a folder where the name does not end in .zip
              backup [FILE]    write a backup while the shop may stay open; without a name where its page says
              rehearse [FILE]  restore a backup beside the shop, check and compare; without a name the latest
              prove ARCHIVE    the same without a shop: make a throw-away one of an archive and check it
              check            rebuild the books from the documents and compare; says what differs
              way-in [NAME]    print a code, good for 15 minutes, with which the owner or NAME chooses a new password
              invent ARCHIVE   write ten years of an invented shop to a zip, to try the program at any size
              demo             show an invented shop in a throw-away folder

            Options
              --data=DIR       the folder of the shop (default: ./data)
              --port=N         the port to serve on (default: 8080)
              --names=LIST     what this machine is called on its network, as in workroom.local,192.0.2.10
              --https-port=N   the port for the encrypted way (default: 8443)
              --pieces=N       how many pieces to invent (default: 20000)
              --seed=N         the number that an invented shop is drawn from (default: 1)
              --help           this text

            The program ends with 0 where all went well, 1 where it did not, 2 where it was not understood, and 3 where the
            shop's data is of a newer program.
            """;

    private static final String DATA = "--patinary.data=";
    private static final String NAMES = "--patinary.https.names=";
    private static final String PIECES = "--patinary.invent.pieces=";
    private static final String SEED = "--patinary.invent.seed=";
    private static final Map<String, String> EXAMPLES = Map.of(
            "--data", "=DIR.",
            "--port", "=8080, from 0 to 65535.",
            "--names", "=workroom.local,192.0.2.10.",
            "--https-port", "=8443, from 0 to 65535.",
            "--pieces", "=20000.",
            "--seed", "=1.");

    static CommandLine parse(String... arguments) throws WrongUse {
        List<String> words = new ArrayList<>();
        List<String> settings = new ArrayList<>();
        for (String argument : arguments) {
            if (argument.equals("--help") || argument.equals("-h")) {
                return new CommandLine(Command.HELP, "", List.of());
            } else if (argument.startsWith("-")) {
                settings.add(setting(argument));
            } else {
                words.add(argument);
            }
        }
        return of(words, settings);
    }

    private static CommandLine of(List<String> words, List<String> settings) throws WrongUse {
        Command command = words.isEmpty() ? Command.SERVE : command(words.get(0));
        int most = command.takesWord() ? 2 : 1;
        if (words.size() > most) {
            throw new WrongUse("Too many words: " + String.join(" ", words.subList(most, words.size())));
        }
        if (command.needsArchive() && words.size() < 2) {
            throw new WrongUse("The command " + words.get(0) + " needs the name of an archive.");
        }
        if (command == Command.HTTPS && settings.stream().noneMatch(setting -> setting.startsWith(NAMES))) {
            throw new WrongUse("The command https needs names, as in --names=workroom.local,192.0.2.10.");
        }
        return new CommandLine(command, words.size() == 2 ? words.get(1) : "", List.copyOf(settings));
    }

    private static Command command(String word) throws WrongUse {
        for (Command command : Command.values()) {
            if (command.written().equals(word)) {
                return command;
            }
        }
        throw new WrongUse("There is no command " + word + ".");
    }

    private static String setting(String option) throws WrongUse {
        int equals = option.indexOf('=');
        String name = equals < 0 ? option : option.substring(0, equals);
        String value = equals < 0 ? "" : option.substring(equals + 1);
        if (name.equals("--data") && !value.isBlank()) {
            return DATA + value;
        }
        if (name.equals("--port") && isPort(value)) {
            return "--server.port=" + value;
        }
        if (name.equals("--names") && !value.isBlank()) {
            return NAMES + value;
        }
        if (name.equals("--https-port") && isPort(value)) {
            return "--patinary.https.port=" + value;
        }
        if (name.equals("--pieces") && value.matches("[1-9][0-9]{0,8}")) {
            return PIECES + value;
        }
        if (name.equals("--seed") && value.matches("[0-9]{1,9}")) {
            return SEED + value;
        }
        // A name with a point is one of the program's own settings, as docs/operations.md lists them.
        if (name.startsWith("--") && name.contains(".") && equals > 0) {
            return option;
        }
        throw new WrongUse(
                EXAMPLES.containsKey(name)
                        ? "The option " + name + " needs a value, as in " + name + EXAMPLES.get(name)
                        : "There is no option " + name + ".");
    }

    /** The folder of the shop, as the program itself would find it. */
    Path data() {
        Map<String, String> environment = System.getenv();
        String otherwise = System.getProperty("patinary.data", environment.getOrDefault("PATINARY_DATA", "./data"));
        return Path.of(settings.stream()
                .filter(setting -> setting.startsWith(DATA))
                .map(setting -> setting.substring(DATA.length()))
                .reduce(otherwise, (earlier, later) -> later));
    }

    /** How many pieces to invent. */
    int pieces() {
        return number(PIECES, 20_000);
    }

    /** What an invented shop is drawn from. */
    int seed() {
        return number(SEED, 1);
    }

    private int number(String name, int otherwise) {
        return settings.stream()
                .filter(setting -> setting.startsWith(name))
                .map(setting -> Integer.valueOf(setting.substring(name.length())))
                .findFirst()
                .orElse(otherwise);
    }

    private static boolean isPort(String value) {
        return value.matches("[0-9]{1,5}") && Integer.parseInt(value) <= 65_535;
    }
}
