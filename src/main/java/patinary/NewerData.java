package patinary;

import org.springframework.boot.ExitCodeGenerator;

/** The shop's data was written by a newer program than this one, which could only damage it. */
final class NewerData extends RuntimeException implements ExitCodeGenerator {

    /** What the program then ends with. */
    static final int EXIT = 3;

    private static final long serialVersionUID = 1L;

    NewerData(String found, String known) {
        super("The shop's data is of version " + found + " and this program knows versions up to " + known
                + ": it was opened by a newer program. Nothing was changed. Start that newer program again, or restore a backup from"
                + " before into an empty shop.");
    }

    @Override
    public int getExitCode() {
        return EXIT;
    }
}
