package patinary.web;

import java.security.SecureRandom;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Gives an unexpected failure a short number, which ties the page a person sees to the entry in the log. */
final class Incident {

    private static final Logger LOG = LoggerFactory.getLogger(Incident.class);
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final String SIGNS = "23456789ABCDEFGHJKMNPQRSTUVWXYZ";
    private static final int LENGTH = 6;

    private Incident() {}

    /** Logs the failure and returns its number. */
    static String of(Throwable failure) {
        String number = number();
        LOG.error("Incident {}", number, failure);
        return number;
    }

    static String number() {
        StringBuilder number = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            number.append(SIGNS.charAt(RANDOM.nextInt(SIGNS.length())));
        }
        return number.toString();
    }
}
