package patinary.web;

/** Another large file is being written. Answered with a page that says so, and status 503. */
class Busy extends RuntimeException {

    Busy() {
        super("Another file is being written");
    }
}
