package patinary.whole;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import patinary.testing.PageForm;
import patinary.testing.Visitor;

/** Several windows that do at the same moment what only one of them can, or what must come to one thing; each is at a copy of the program. */
final class Rivals {

    private static final Pattern CODE = Pattern.compile("\\bP\\d{4,}\\b");
    private static final int STORED = 303;
    private static final int FIRST = 201;

    private final List<Visitor> windows;
    private final ExecutorService threads;
    private final Told told;
    private final String channel;
    /** Answers by what was tried. */
    private final Map<String, Map<Integer, Integer>> answers = new LinkedHashMap<>();

    Rivals(List<Visitor> windows, ExecutorService threads, Told told, String channel) {
        this.windows = windows;
        this.threads = threads;
        this.told = told;
        this.channel = channel;
    }

    /** How often each status was answered, by what was tried. */
    Map<String, Map<Integer, Integer>> answers() {
        return answers;
    }

    /** All of it once. */
    void meet() throws Exception {
        UUID first = receipt();
        List<UUID> receipts = new ArrayList<>(List.of(first));
        while (receipts.size() < windows.size()) {
            receipts.add(receipt());
        }
        addPieces(receipts);
        change(first);
        sell(code(first));
        sendTwice();
        deliverTwice();
    }

    /** One receipt, sent by two at once. */
    private void sendTwice() throws Exception {
        UUID id = UUID.randomUUID();
        Map<String, String> purchase = purchase(id);
        List<Integer> came = atOnce("the same receipt", window -> {
            Map<String, String> mine = new LinkedHashMap<>(purchase);
            mine.put("_csrf", window.token("receipts/new"));
            return () -> window.post("receipts", mine);
        });
        if (came.contains(STORED)) {
            told.documents.put(id, "receipt");
        }
    }

    /** One entry of a phone, sent by two at once. */
    private void deliverTwice() throws Exception {
        UUID key = UUID.randomUUID();
        Map<String, String> crate = Map.of(
                "id", key.toString(),
                "things[0].what", unique("Crate"),
                "things[0].price", "3.00",
                "tillTotal", "3.00",
                "paidWith", "OWNER");
        List<Integer> came = atOnce("the same entry", window -> {
            String token = window.deliveryToken();
            return () -> window.deliver("buy", key, token, crate);
        });
        if (came.stream().filter(status -> status == FIRST).count() != 1) {
            told.wrong.add("an entry sent by several at once was answered " + came);
        }
        told.documents.put(key, "buy");
    }

    private void sell(String code) throws Exception {
        List<UUID> sales = new ArrayList<>();
        List<Integer> came = atOnce("a sale of one piece", window -> {
            UUID id = UUID.randomUUID();
            sales.add(id);
            Map<String, String> sale = sale(id, code);
            sale.put("_csrf", window.token("sales/new"));
            return () -> window.post("sales/new", sale);
        });
        onlyOne("a piece was sold", came);
        for (int i = 0; i < came.size(); i++) {
            if (came.get(i) == STORED) {
                told.documents.put(sales.get(i), "sale");
            }
        }
    }

    /** All read the same form, and save it at once. */
    private void change(UUID receipt) throws Exception {
        List<String> notes = new ArrayList<>();
        List<Integer> came = atOnce("a change of one receipt", window -> {
            Map<String, String> form = form(window, receipt);
            notes.add(unique("Seen"));
            form.put("note", notes.get(notes.size() - 1));
            return () -> window.post("receipts/" + receipt, form);
        });
        onlyOne("a receipt was changed", came);
        String now = form(windows.get(0), receipt).get("note");
        int winner = came.indexOf(STORED);
        if (winner >= 0 && !notes.get(winner).equals(now)) {
            told.wrong.add("the change " + notes.get(winner) + " was answered and is " + now);
        }
    }

    /** Each adds a piece to another receipt; all pieces want the next code. */
    private void addPieces(List<UUID> receipts) throws Exception {
        List<Integer> came = atOnce("a piece more on different receipts", window -> {
            UUID receipt = receipts.get(windows.indexOf(window));
            Map<String, String> form = form(window, receipt);
            form.putAll(line(1));
            form.put("tillTotal", "8.50");
            return () -> window.post("receipts/" + receipt, form);
        });
        if (came.stream().anyMatch(status -> status != STORED)) {
            told.wrong.add("pieces on different receipts were answered " + came);
        }
    }

    private void onlyOne(String what, List<Integer> came) {
        if (came.stream().filter(status -> status == STORED).count() != 1) {
            told.wrong.add(what + ", answered " + came);
        }
    }

    @FunctionalInterface
    private interface Try {
        Callable<HttpResponse<String>> ready(Visitor window) throws IOException, InterruptedException;
    }

    /** Everybody gets ready, one after another, and then all send at once. @return what each was answered, in their order */
    private List<Integer> atOnce(String what, Try one) throws Exception {
        CyclicBarrier start = new CyclicBarrier(windows.size());
        List<Callable<HttpResponse<String>>> ready = new ArrayList<>();
        for (Visitor window : windows) {
            ready.add(one.ready(window));
        }
        List<Callable<HttpResponse<String>>> waiting = new ArrayList<>();
        for (Callable<HttpResponse<String>> send : ready) {
            waiting.add(() -> {
                start.await();
                return send.call();
            });
        }
        List<Integer> came = new ArrayList<>();
        for (Future<HttpResponse<String>> answer : threads.invokeAll(waiting)) {
            int status = answer.get().statusCode();
            came.add(status);
            answers.computeIfAbsent(what, none -> new TreeMap<>()).merge(status, 1, Integer::sum);
            if (status >= 500) {
                told.notNow.add(status);
            }
        }
        return came;
    }

    private UUID receipt() throws IOException, InterruptedException {
        UUID id = UUID.randomUUID();
        int status =
                windows.get(0).fill("receipts/new", "receipts", purchase(id)).statusCode();
        if (status != STORED) {
            throw new IllegalStateException("A receipt was answered " + status);
        }
        told.documents.put(id, "receipt");
        return id;
    }

    private String code(UUID receipt) throws IOException, InterruptedException {
        Matcher code = CODE.matcher(windows.get(0).get("receipts/" + receipt).body());
        if (!code.find()) {
            throw new IllegalStateException("A receipt without its piece");
        }
        return code.group();
    }

    private static Map<String, String> form(Visitor window, UUID receipt) throws IOException, InterruptedException {
        String page = window.get("receipts/" + receipt + "/edit").body();
        return PageForm.on(page).stream()
                .filter(form -> form.answers().containsKey("tillTotal"))
                .map(form -> {
                    Map<String, String> answers = new LinkedHashMap<>(form.answers());
                    answers.put("action", "save");
                    return answers;
                })
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("No form of " + receipt));
    }

    private Map<String, String> purchase(UUID id) {
        Map<String, String> answers = new LinkedHashMap<>(line(0));
        answers.put("id", id.toString());
        answers.put("day", "OTHER");
        answers.put("date", "2025-03-01");
        answers.put("tillTotal", "4.25");
        answers.put("paidWith", "OWNER");
        answers.put("action", "save");
        return answers;
    }

    private Map<String, String> line(int number) {
        String line = "lines[" + number + "].";
        return Map.of(
                line + "kind", "PIECES",
                line + "title", unique("Tin box"),
                line + "price", "4.25",
                line + "quantity", "1");
    }

    private Map<String, String> sale(UUID id, String code) {
        Map<String, String> answers = new LinkedHashMap<>();
        answers.put("id", id.toString());
        answers.put("version", "0");
        answers.put("date", "2025-03-02");
        answers.put("channel", channel);
        answers.put("order", unique("O"));
        answers.put("lines[0].title", "Tin box");
        answers.put("lines[0].codes", code);
        answers.put("lines[0].price", "12.00");
        return answers;
    }

    private String unique(String what) {
        return what + " " + told.number.incrementAndGet();
    }
}
