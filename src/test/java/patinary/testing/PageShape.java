package patinary.testing;

import java.util.function.UnaryOperator;

/** What kind of page an address leads to: pages that differ only in which row they show are one kind of page. */
public final class PageShape {

    private PageShape() {}

    public static String of(String path) {
        return path.replaceAll("[?#].*", "")
                .replaceAll("[0-9a-f]{8}-[0-9a-f-]{27}", "one")
                .replaceAll("/\\d{4}(?=/|$)", "/year")
                .replaceAll("/line/\\w+", "/line/one")
                .replaceAll("on-the-shelf/.*", "on-the-shelf/one")
                .replaceAll("/(guide|handbook)/(?!what-moves)[a-z0-9-]+", "/$1/one");
    }

    /** The address of a route with something in the place of each variable; a variable may bring an expression with braces. */
    public static String filled(String pattern, UnaryOperator<String> byVariable) {
        StringBuilder path = new StringBuilder();
        StringBuilder variable = new StringBuilder();
        int depth = 0;
        for (char sign : pattern.toCharArray()) {
            depth -= sign == '}' ? 1 : 0;
            if (depth == 0 && sign == '}') {
                path.append(byVariable.apply(variable.toString()));
                variable.setLength(0);
            } else if (depth > 0) {
                variable.append(sign);
            } else if (sign != '{') {
                path.append(sign);
            }
            depth += sign == '{' ? 1 : 0;
        }
        return path.toString();
    }

    /** Whether the address leads to a file that a browser would save. */
    public static boolean isFile(String path) {
        return path.replaceAll("[?#].*", "").matches(".*\\.(csv|zip|xlsx|pdf|txt)|.*/download|/photos/.*/full");
    }
}
