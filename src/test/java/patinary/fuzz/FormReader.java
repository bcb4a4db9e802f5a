package patinary.fuzz;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.web.util.HtmlUtils;

/** Reads the forms and the links of a page. The shop's own templates write both without surprises; this is no parser of any page. */
final class FormReader {

    private static final Pattern FORM = Pattern.compile("<form\\b([^>]*)>(.*?)</form>", Pattern.DOTALL);
    private static final Pattern CONTROL = Pattern.compile(
            "<(input|button)\\b([^>]*)>|<select\\b([^>]*)>(.*?)</select>|<textarea\\b([^>]*)>(.*?)</textarea>",
            Pattern.DOTALL);
    private static final Pattern OPTION = Pattern.compile("<option\\b([^>]*)>");
    private static final Pattern LINK = Pattern.compile("<a\\b[^>]*\\bhref=\"(/[^\"]*)\"");

    private FormReader() {}

    static List<String> links(String html) {
        return LINK.matcher(html)
                .results()
                .map(link -> HtmlUtils.htmlUnescape(link.group(1)))
                .toList();
    }

    /** The forms that change something; the address is the page's own where a form names none. */
    static List<FoundForm> forms(String page, String html) {
        List<FoundForm> found = new ArrayList<>();
        Matcher form = FORM.matcher(html);
        while (form.find()) {
            String head = form.group(1);
            if (attribute(head, "method", "get").equalsIgnoreCase("post")) {
                found.add(new FoundForm(
                        page,
                        attribute(head, "action", page),
                        head.contains("multipart/form-data"),
                        fields(form.group(2))));
            }
        }
        return found;
    }

    private static List<FoundForm.Field> fields(String body) {
        Map<String, FoundForm.Field> fields = new LinkedHashMap<>();
        Matcher control = CONTROL.matcher(body);
        while (control.find()) {
            FoundForm.Field field = field(control);
            if (!field.name().isEmpty() && !field.name().equals("_csrf")) {
                fields.merge(field.name(), field, FormReader::oneOfSeveral);
            }
        }
        return List.copyOf(fields.values());
    }

    private static FoundForm.Field field(Matcher control) {
        if (control.group(3) != null) {
            List<String> options = OPTION.matcher(control.group(4))
                    .results()
                    .map(option -> attribute(option.group(1), "value", ""))
                    .toList();
            return new FoundForm.Field(attribute(control.group(3), "name", ""), "select", "", options);
        }
        if (control.group(5) != null) {
            return new FoundForm.Field(
                    attribute(control.group(5), "name", ""),
                    "textarea",
                    HtmlUtils.htmlUnescape(control.group(6)),
                    List.of());
        }
        String attributes = control.group(2);
        String type = control.group(1).equals("button") ? "button" : attribute(attributes, "type", "text");
        String value = attribute(attributes, "value", "");
        boolean oneOf = List.of("radio", "checkbox", "button").contains(type);
        return new FoundForm.Field(
                attribute(attributes, "name", ""), type, oneOf ? "" : value, oneOf ? List.of(value) : List.of());
    }

    private static FoundForm.Field oneOfSeveral(FoundForm.Field first, FoundForm.Field next) {
        List<String> options = new ArrayList<>(first.options());
        options.addAll(next.options());
        return new FoundForm.Field(first.name(), first.type(), first.value(), options);
    }

    private static String attribute(String attributes, String name, String otherwise) {
        Matcher value = Pattern.compile("(?:^|\\s)" + name + "=\"([^\"]*)\"").matcher(attributes);
        return value.find() ? HtmlUtils.htmlUnescape(value.group(1)) : otherwise;
    }
}
