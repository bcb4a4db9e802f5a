package patinary.fuzz;

import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.net.URI;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.context.WebApplicationContext;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import patinary.testing.InventedShop;
import patinary.testing.PageShape;

/** All forms that the pages of a shop show, one of each kind, and all addresses of the program. */
final class Crawl {

    private static final Pattern ID = Pattern.compile("[0-9a-f]{8}-[0-9a-f-]{27}");
    /** What would end the stay, is there before the shop is, or is another test's own. */
    private static final Set<String> LEFT_OUT = Set.of("/sign-out", "/sign-in", "/setup", "/probe");

    private final Map<String, FoundForm> forms = new LinkedHashMap<>();
    private final List<Route> routes = new ArrayList<>();
    private final Set<String> pages = new LinkedHashSet<>();
    private final Set<String> ids = new LinkedHashSet<>();

    private Crawl() {}

    static Crawl of(MockMvc mvc, WebApplicationContext program, Faults faults) throws Exception {
        Crawl crawl = new Crawl();
        crawl.walk(mvc, faults);
        crawl.addRoutes(program.getBean("requestMappingHandlerMapping", RequestMappingHandlerMapping.class));
        return crawl;
    }

    List<FoundForm> forms() {
        return List.copyOf(forms.values());
    }

    List<Route> routes(boolean change) {
        return routes.stream().filter(route -> route.change() == change).toList();
    }

    List<String> ids() {
        return List.copyOf(ids);
    }

    /** Opens every page once more: what was stored since must not keep one from opening. */
    void again(MockMvc mvc, Faults faults, String when) {
        for (String page : pages) {
            try {
                MockHttpServletResponse answer = open(mvc, page);
                faults.addIf(answer.getStatus() >= 500, "page " + PageShape.of(page) + " " + answer.getStatus(), when);
            } catch (Exception failure) {
                faults.add("page " + PageShape.of(page) + " " + Faults.kind(failure), when);
            }
        }
    }

    private void walk(MockMvc mvc, Faults faults) throws Exception {
        Set<String> seen = new HashSet<>();
        Deque<String> ahead = new ArrayDeque<>(List.of("/"));
        while (!ahead.isEmpty()) {
            String path = ahead.poll();
            if (PageShape.isFile(path) || !seen.add(PageShape.of(path))) {
                continue;
            }
            MockHttpServletResponse answer = open(mvc, path);
            faults.addIf(answer.getStatus() >= 400, "crawl " + path, String.valueOf(answer.getStatus()));
            String html = answer.getContentAsString();
            pages.add(path);
            ID.matcher(html).results().limit(40).forEach(id -> ids.add(id.group()));
            for (FoundForm form : FormReader.forms(path, html)) {
                if (!LEFT_OUT.contains(form.path())) {
                    forms.putIfAbsent(PageShape.of(form.path()) + " of " + PageShape.of(path) + names(form), form);
                }
            }
            ahead.addAll(FormReader.links(html));
        }
    }

    private static String names(FoundForm form) {
        return form.fields().stream().map(FoundForm.Field::name).toList().toString();
    }

    private static MockHttpServletResponse open(MockMvc mvc, String path) throws Exception {
        return mvc.perform(get(URI.create(path.replaceAll("#.*", "").replace(" ", "%20")))
                        .with(InventedShop.owner()))
                .andReturn()
                .getResponse();
    }

    private void addRoutes(RequestMappingHandlerMapping mapping) {
        mapping.getHandlerMethods().forEach((info, method) -> {
            for (String pattern : info.getPatternValues()) {
                if (!LEFT_OUT.contains(pattern)) {
                    routes.add(Route.of(changes(info), pattern, method));
                }
            }
        });
        routes.sort(java.util.Comparator.comparing(Route::pattern).thenComparing(Route::change));
    }

    private static boolean changes(RequestMappingInfo info) {
        return info.getMethodsCondition().getMethods().contains(RequestMethod.POST);
    }

    @Override
    public String toString() {
        return pages.size() + " pages, " + forms.size() + " forms, " + routes.size() + " addresses";
    }
}
