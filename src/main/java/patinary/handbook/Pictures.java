package patinary.handbook;

/** What is known of the pictures that a page may show. */
interface Pictures {

    /** In pixels of the file. */
    record Size(int width, int height) {}

    /**
     * @param target as the page names it
     * @throws IllegalArgumentException where there is no such picture
     */
    Size size(String target);
}
