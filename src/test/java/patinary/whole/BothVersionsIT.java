package patinary.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.web.util.HtmlUtils;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.testing.InventedShop;
import patinary.testing.PageForm;
import patinary.testing.ShopTest;
import patinary.testing.Visitor;

/**
 * Two people at once on every form of the demo shop that a link leads to: whoever comes second gets the page with both versions,
 * nothing typed is lost, and she takes either. A form on which something saved can be changed, and that would overwrite
 * another's change in silence, is found here.
 */
@ShopTest
class BothVersionsIT {

    private static final Pattern LINK = Pattern.compile("<a\\b[^>]*\\shref=\"(/[^\"]*)\"");
    private static final String MINE = " and mine";

    private static final String NEW_FACT = "records a new fact beside the others, under an id of its own";

    /** Forms on pages of one thing that overwrite nothing saved, and why. */
    private static final Map<String, String> WITHOUT_VERSION = Map.ofEntries(
            Map.entry("/claims/one/paid", NEW_FACT),
            Map.entry("/pieces/one/let-go", NEW_FACT),
            Map.entry("/pieces/one/split", NEW_FACT),
            Map.entry("/receipts/one/pay", NEW_FACT),
            Map.entry("/sales/one/postage", NEW_FACT),
            Map.entry("/sales/one/posted", "says one day, shown as it is saved"),
            Map.entry("/sales/one/refund", NEW_FACT),
            Map.entry("/supplies/one/count", NEW_FACT),
            Map.entry("/supplies/one/take", NEW_FACT),
            Map.entry("/tax-places/one/rates", NEW_FACT));

    /** Forms that carry a version of nothing yet: what they record is new; and the steps of an offer, each a new fact. */
    private static final Pattern FRESH = Pattern.compile(".*/new(/.*)?|/receipts|/sources|/carriers|/offers/one");

    @LocalServerPort
    private int port;

    @Autowired
    private ShopArchive archive;

    private final Visitor visitor = new Visitor();
    private final List<String> faults = new ArrayList<>();
    private final Set<String> without = new TreeSet<>();
    private final Set<String> tried = new TreeSet<>();
    private int beside;

    @Test
    void whoeverComesSecondSeesBothVersionsAndLosesNothing() throws Exception {
        archive.load(Path.of("db", "demo"), Progress.SILENT);
        visitor.visit(port);
        visitor.fill("sign-in", "sign-in", Map.of("name", InventedShop.OWNER, "password", InventedShop.PASSWORD));
        Set<String> seen = new LinkedHashSet<>();
        Deque<String> ahead = new ArrayDeque<>(List.of("/"));
        while (!ahead.isEmpty()) {
            String path = ahead.poll();
            if (!isFile(path) && seen.add(shape(path))) {
                ahead.addAll(look(path));
            }
        }
        assertThat(faults).isEmpty();
        assertThat(without).isEqualTo(new TreeSet<>(WITHOUT_VERSION.keySet()));
        assertThat(tried).hasSizeGreaterThan(35);
        assertThat(beside).isGreaterThan(15);
    }

    private List<String> look(String path) throws IOException, InterruptedException {
        HttpResponse<String> page = visitor.get(path.substring(1));
        if (page.statusCode() != 200) {
            return List.of();
        }
        for (PageForm form : PageForm.on(page.body())) {
            if (form.answers().containsKey("version") && !form.typed().isEmpty()) {
                if (!FRESH.matcher(shape(form.action())).matches() && tried.add(shape(form.action()))) {
                    comeSecond(form);
                }
            } else if (path.matches(".*[0-9a-f]{8}-.*")
                    && form.typed().stream()
                            .anyMatch(field -> !form.answers().get(field).isBlank())) {
                without.add(shape(form.action()));
            }
        }
        return LINK.matcher(page.body())
                .results()
                .map(link -> HtmlUtils.htmlUnescape(link.group(1)))
                .toList();
    }

    private void comeSecond(PageForm form) throws IOException, InterruptedException {
        Map<String, String> stale = new LinkedHashMap<>(form.answers());
        stale.put("version", String.valueOf(Long.parseLong(stale.get("version")) + 1_000));
        Optional<String> field = words(form);
        field.ifPresent(name -> stale.merge(name, MINE, String::concat));
        String what = shape(form.action());
        HttpResponse<String> answer = visitor.post(form.action().substring(1), stale);
        if (answer.statusCode() != 409) {
            faults.add(what + " answered " + answer.statusCode() + " to the second");
            return;
        }
        Optional<PageForm> both = PageForm.on(answer.body()).stream()
                .filter(one -> one.answers().containsKey("version")
                        && shape(one.action()).equals(what))
                .findFirst();
        if (both.isEmpty() || !answer.body().contains("id=\"both-title\"")) {
            faults.add(what + " does not show the form again");
            return;
        }
        if (!both.get().answers().get("version").equals(form.answers().get("version"))) {
            faults.add(what + " does not take over the version");
        }
        lost(form, stale, both.get())
                .ifPresent(name -> faults.add(what + " lost what was typed in " + name + ": " + stale.get(name)
                        + " became " + both.get().answers().get(name)));
        if (field.isPresent()) {
            takeTheirs(form, both.get(), field.get());
        }
    }

    /** A field of words in which anything may stand. */
    private static Optional<String> words(PageForm form) {
        return form.typed().stream()
                .filter(name -> name.matches("(.*\\.)?(note|name|title|buyer|body|done|purpose|what|shopName|line)"))
                .filter(name -> !form.answers().get(name).isBlank())
                .findFirst();
    }

    private static Optional<String> lost(PageForm form, Map<String, String> sent, PageForm shown) {
        return form.typed().stream()
                .filter(name -> !sent.get(name)
                        .strip()
                        .replace("\r\n", "\n")
                        .equals(String.valueOf(shown.answers().get(name))
                                .strip()
                                .replace("\r\n", "\n")))
                .findFirst();
    }

    private void takeTheirs(PageForm before, PageForm both, String field) throws IOException, InterruptedException {
        String what = shape(both.action());
        if (!before.answers()
                .get(field)
                .strip()
                .equals(String.valueOf(both.answers().get("taken." + field)).strip())) {
            faults.add(what + " does not show what is saved in " + field + ": "
                    + both.answers().get("taken." + field));
            return;
        }
        beside++;
        Map<String, String> taking = new LinkedHashMap<>(both.answers());
        taking.put("take", field);
        HttpResponse<String> answer = visitor.post(both.action().substring(1), taking);
        // What lies in a sealed year is refused for that, and shown again with what was taken.
        if (answer.statusCode() != 303 && answer.statusCode() != 422) {
            faults.add(what + " answered " + answer.statusCode() + " to what was taken");
        } else if (answer.body().contains(MINE)) {
            faults.add(what + " kept what should have been taken from the other");
        }
    }

    private static String shape(String path) {
        return path.replaceAll("[?#].*", "")
                .replaceAll("[0-9a-f]{8}-[0-9a-f-]{27}", "one")
                .replaceAll("/\\d{4}(?=/|$)", "/year")
                .replaceAll("/line/\\w+", "/line/one")
                .replaceAll("on-the-shelf/.*", "on-the-shelf/one")
                .replaceAll("/(guide|handbook)/[a-z0-9-]+", "/$1/one");
    }

    private static boolean isFile(String path) {
        return path.replaceAll("[?#].*", "")
                .matches(".*\\.(csv|zip|xlsx|pdf|txt)|.*/download|/photos/.*|/(guide|handbook)/.*");
    }
}
