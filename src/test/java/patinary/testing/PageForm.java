package patinary.testing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.web.util.HtmlUtils;

/**
 * A form as it stands on a page, with what a browser would send of it if nothing were touched.
 *
 * @param action where it is sent
 * @param answers its fields and what stands in them; of several with one name the last
 * @param typed the names of those in which a person types, in their order
 */
public record PageForm(String action, Map<String, String> answers, List<String> typed) {

    private static final Pattern FORM = Pattern.compile("<form\\b([^>]*)>(.*?)</form>", Pattern.DOTALL);
    private static final Pattern CONTROL = Pattern.compile(
            "<input\\b([^>]*)>|<textarea\\b([^>]*)>(.*?)</textarea>|<select\\b([^>]*)>(.*?)</select>", Pattern.DOTALL);
    private static final Pattern OPTION = Pattern.compile("<option\\b([^>]*)>");

    /** All forms of a page that change something. */
    public static List<PageForm> on(String page) {
        List<PageForm> forms = new ArrayList<>();
        Matcher form = FORM.matcher(page);
        while (form.find()) {
            if (attribute(form.group(1), "method").equals("post")) {
                forms.add(read(attribute(form.group(1), "action"), form.group(2)));
            }
        }
        return forms;
    }

    private static PageForm read(String action, String inside) {
        PageForm form = new PageForm(action, new LinkedHashMap<>(), new ArrayList<>());
        Matcher control = CONTROL.matcher(inside);
        while (control.find()) {
            if (control.group(1) != null) {
                form.input(control.group(1));
            } else if (control.group(2) != null) {
                String name = attribute(control.group(2), "name");
                form.answers.put(name, HtmlUtils.htmlUnescape(control.group(3)));
                form.typed.add(name);
            } else {
                form.answers.put(attribute(control.group(4), "name"), chosen(control.group(5)));
            }
        }
        form.answers.remove("");
        return form;
    }

    private void input(String attributes) {
        String name = attribute(attributes, "name");
        String type = attribute(attributes, "type");
        switch (type) {
            case "checkbox", "radio" -> {
                if (attributes.matches("(?s).*\\schecked\\b.*")) {
                    answers.put(name, attribute(attributes, "value"));
                }
            }
            case "submit", "button", "file", "search" -> {}
            default -> {
                answers.put(name, attribute(attributes, "value"));
                if (!type.equals("hidden")) {
                    typed.add(name);
                }
            }
        }
    }

    private static String chosen(String options) {
        Matcher option = OPTION.matcher(options);
        String first = null;
        while (option.find()) {
            String value = attribute(option.group(1), "value");
            if (option.group(1).matches("(?s).*\\sselected\\b.*")) {
                return value;
            }
            first = first == null ? value : first;
        }
        return first == null ? "" : first;
    }

    private static String attribute(String attributes, String name) {
        Matcher found = Pattern.compile("(?:^|\\s)" + name + "=\"([^\"]*)\"").matcher(attributes);
        return found.find() ? HtmlUtils.htmlUnescape(found.group(1)) : "";
    }
}
