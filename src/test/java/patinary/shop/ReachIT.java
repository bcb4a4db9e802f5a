package patinary.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.http.HttpMethod;
import org.springframework.http.server.PathContainer;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import patinary.testing.ShopTest;

/**
 * Every route of the program by everybody who is not the owner: what the table says is what is answered. That a stranger is
 * asked to sign in, by every route, is in {@link DoorsIT}.
 */
@ShopTest
class ReachIT {

    private static final String ID = "00000000-0000-4000-8000-00000000000f";
    private static final Pattern VARIABLE = Pattern.compile("\\{([^{}:]+)(?::((?:[^{}]|\\{[^{}]*})*))?}");

    private static final List<HttpMethod> METHODS = List.of(HttpMethod.GET, HttpMethod.POST);

    /** A route with something in each gap of its pattern. */
    private record Route(String pattern, String path, Set<RequestMethod> methods) {

        boolean takes(HttpMethod method) {
            return methods.isEmpty() || methods.contains(RequestMethod.resolve(method));
        }
    }

    @Autowired
    private MockMvc mvc;

    @Autowired
    @Qualifier("requestMappingHandlerMapping")
    private RequestMappingHandlerMapping mapping;

    @Test
    void isAnsweredAsTheTableSays() throws Exception {
        List<String> wrong = new ArrayList<>();
        int tried = 0;
        for (Route route : routes()) {
            for (HttpMethod method : METHODS) {
                for (Visitor visitor : List.of(Visitor.ACCOUNTANT, Visitor.HELPER)) {
                    if (!isSigningInOrOut(route.path, method)) {
                        tried++;
                        compare(visitor, method, route, wrong);
                    }
                }
            }
        }
        assertThat(tried).isGreaterThan(1500);
        assertThat(wrong).isEmpty();
    }

    /** These two are taken by their filters, before anybody asks the table. */
    private static boolean isSigningInOrOut(String path, HttpMethod method) {
        return method == HttpMethod.POST && (path.equals("/sign-out") || path.equals("/sign-in"));
    }

    private void compare(Visitor visitor, HttpMethod method, Route route, List<String> wrong) throws Exception {
        boolean open = Reach.isOpen(visitor, method.name(), PathContainer.parsePath(route.path));
        // What is open has its own test; carrying everything out here would take long and say little.
        if (open && method != HttpMethod.GET) {
            return;
        }
        MockHttpServletResponse answer =
                mvc.perform(as(visitor, method, route.path)).andReturn().getResponse();
        boolean closed = "/refused".equals(answer.getForwardedUrl());
        boolean itself = route.path.startsWith("/refused");
        if (closed == open && !itself) {
            wrong.add(visitor + " " + method + " " + route.path + " was " + (closed ? "closed" : "open"));
        }
    }

    private static MockHttpServletRequestBuilder as(Visitor visitor, HttpMethod method, String path) {
        MockHttpServletRequestBuilder request =
                MockMvcRequestBuilders.request(method, path).with(csrf());
        return visitor == Visitor.STRANGER ? request : request.with(user("Kim").roles(visitor.name()));
    }

    /** By no other method does anybody but the owner get in, wherever it leads. */
    @Test
    void closesEveryOtherMethod() {
        for (Route route : routes()) {
            for (HttpMethod method : List.of(HttpMethod.PUT, HttpMethod.PATCH, HttpMethod.DELETE, HttpMethod.OPTIONS)) {
                for (Visitor visitor : List.of(Visitor.STRANGER, Visitor.ACCOUNTANT, Visitor.HELPER)) {
                    assertThat(Reach.isOpen(visitor, method.name(), PathContainer.parsePath(route.path)))
                            .as(visitor + " " + method + " " + route.path)
                            .isFalse();
                }
            }
        }
    }

    /**
     * Written down beside the table, so that a new route opens to a helper or an accountant only by a line that somebody wrote
     * and somebody read. When this fails: is the page free of costs and profit, and of what an accountant must not see?
     */
    @Test
    void opensOnlyWhatIsWrittenDown() throws IOException {
        Set<String> open = new TreeSet<>();
        for (Route route : routes()) {
            for (HttpMethod method : METHODS) {
                for (Visitor visitor : List.of(Visitor.ACCOUNTANT, Visitor.HELPER)) {
                    boolean may = Reach.isOpen(visitor, method.name(), PathContainer.parsePath(route.path));
                    if (may && route.takes(method)) {
                        open.add(visitor + " " + method + " " + route.pattern.replaceAll("\\{([^:}]+)[^/]*}", "{$1}"));
                    }
                }
            }
        }
        Path kept = Path.of("src/test/resources/open-routes.txt");
        assertThat(String.join("\n", open) + "\n").isEqualTo(Files.readString(kept));
    }

    private List<Route> routes() {
        List<Route> routes = new ArrayList<>();
        for (RequestMappingInfo info : mapping.getHandlerMethods().keySet()) {
            for (String pattern : info.getPatternValues()) {
                routes.add(new Route(
                        pattern, filled(pattern), info.getMethodsCondition().getMethods()));
            }
        }
        return routes;
    }

    private static String filled(String pattern) {
        return VARIABLE.matcher(pattern).replaceAll(gap -> Matcher.quoteReplacement(fitting(gap.group(2))));
    }

    private static String fitting(String rule) {
        if (rule == null) {
            return ID;
        }
        for (String word : List.of(ID, "2025", "word", "0".repeat(64), rule.replaceAll("\\|.*", ""))) {
            if (word.matches(rule)) {
                return word;
            }
        }
        throw new IllegalStateException("Nothing fits " + rule);
    }
}
