package patinary.web;

/** What was asked for is not in the shop. Answered with a friendly page and status 404. */
public class NotFound extends RuntimeException {

    /** @param what what was looked for, for the log only */
    public NotFound(String what) {
        super(what);
    }
}
