package patinary.web;

/**
 * One way through the shop.
 *
 * @param id the name of its messages and of its picture
 * @param path where it leads
 * @param group which heading it stands under
 */
public record NavEntry(String id, String path, String group) {

    /** Whether a page at {@code current} belongs to this entry. */
    public boolean covers(String current) {
        return path.equals("/") ? current.equals("/") : current.equals(path) || current.startsWith(path + "/");
    }
}
