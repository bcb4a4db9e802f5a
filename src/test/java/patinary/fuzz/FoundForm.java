package patinary.fuzz;

import java.util.List;

/**
 * A form as a page shows it, or as a route reads it.
 *
 * @param page where it stands; empty where it was made from the route alone
 * @param action where it is sent, as the page says it
 * @param files whether it carries files
 * @param fields what it asks, in its order
 */
record FoundForm(String page, String action, boolean files, List<Field> fields) {

    FoundForm {
        fields = List.copyOf(fields);
    }

    /** The address without what stands behind it. */
    String path() {
        return action.replaceAll("[?#].*", "");
    }

    /**
     * One thing that is asked.
     *
     * @param type the type of the input, or {@code select}, {@code textarea}, {@code button}
     * @param value what stands in it already
     * @param options what may be chosen; empty where anything may be typed
     */
    record Field(String name, String type, String value, List<String> options) {

        Field {
            options = List.copyOf(options);
        }
    }
}
