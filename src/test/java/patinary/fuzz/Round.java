package patinary.fuzz;

import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import patinary.testing.InventedShop;

/** Sends attempts one after the other and looks at what each left behind. */
final class Round {

    private final MockMvc mvc;
    private final List<FoundForm> forms;
    private final List<Route> changing;
    private final List<Route> reading;
    private final List<String> ids;
    private final RowCounts counts;
    private final Faults faults;
    private final Map<Integer, Integer> statuses = new TreeMap<>();
    private int stored;

    Round(MockMvc mvc, Crawl crawl, RowCounts counts, Faults faults) {
        this.mvc = mvc;
        this.forms = crawl.forms();
        this.changing = crawl.routes(true);
        this.reading = crawl.routes(false);
        this.ids = crawl.ids();
        this.counts = counts;
        this.faults = faults;
    }

    /** How many requests changed something. */
    int done() {
        return stored;
    }

    void run(long seed, int requests) {
        Answers answers = new Answers(seed, ids);
        Map<String, Long> before = counts.now();
        for (int i = 0; i < requests; i++) {
            Attempt attempt = attempt(answers);
            String where = "seed " + seed + " request " + i + ": " + attempt;
            int status = send(attempt, answers, where);
            Map<String, Long> after = counts.now();
            Map<String, Long> changed = RowCounts.difference(before, after);
            if (!changed.isEmpty()) {
                stored++;
                faults.addIf(status >= 400, "half done " + changed.keySet() + " after " + status, where);
                faults.addIf(!attempt.change(), "changed by reading " + changed.keySet(), where);
            }
            before = after;
        }
    }

    private Attempt attempt(Answers answers) {
        return switch (answers.random().nextInt(10)) {
            case 0 -> Attempt.of(answers.one(reading), answers);
            case 1, 2 -> Attempt.of(answers.one(changing), answers);
            default -> Attempt.of(answers.one(forms), answers);
        };
    }

    private int send(Attempt attempt, Answers answers, String where) {
        try {
            MvcResult result = mvc.perform(attempt.request(answers)).andReturn();
            MockHttpServletResponse answer = result.getResponse();
            int status = answer.getStatus();
            statuses.merge(status, 1, Integer::sum);
            if (status >= 500) {
                Exception failure = result.getResolvedException();
                faults.add(failure == null ? "status " + status : Faults.kind(failure), where);
            }
            faults.addIf(isMute(answer), "no words with " + status, where);
            follow(attempt, answer, where);
            return status;
        } catch (Exception failure) {
            statuses.merge(0, 1, Integer::sum);
            faults.add("thrown " + Faults.kind(failure), where);
            return 500;
        }
    }

    /** A refusal without a page: not one of those that the server turns into a page afterwards. */
    private static boolean isMute(MockHttpServletResponse answer) {
        return answer.getStatus() >= 400
                && !answer.isCommitted()
                && answer.getForwardedUrl() == null
                && answer.getContentAsByteArray().length == 0;
    }

    /** The page that a change leads to opens. */
    private void follow(Attempt attempt, MockHttpServletResponse answer, String where) throws Exception {
        String next = answer.getRedirectedUrl();
        if (next == null || !attempt.change()) {
            return;
        }
        faults.addIf(!next.startsWith("/") || next.startsWith("//"), "leads away to " + next, where);
        MvcResult page = mvc.perform(get(URI.create(next.replaceAll("#.*", "").replace(" ", "%20")))
                        .with(InventedShop.owner()))
                .andReturn();
        if (page.getResponse().getStatus() >= 500) {
            Exception failure = page.getResolvedException();
            faults.add("next page " + (failure == null ? next : Faults.kind(failure)), where);
        }
    }

    @Override
    public String toString() {
        return statuses.values().stream().mapToInt(Integer::intValue).sum() + " requests " + statuses + ", " + stored
                + " changed something";
    }
}
