package patinary.handbook;

import java.util.Locale;

/** Where a page is kept: in a folder of {@code docs}, and under the same word in the program. */
enum Shelf {
    GUIDE,
    HANDBOOK;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The address of one of its pages; of the list of them for its {@code README}. */
    String address(String page) {
        return "/" + word() + (page.equals(Library.LIST) ? "" : "/" + page);
    }
}
