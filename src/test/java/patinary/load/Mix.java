package patinary.load;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import patinary.testing.Visitor;

/**
 * What a person does next: mostly looks at lists and single things, now and then at something that adds up the whole shop, and every tenth
 * time records a purchase. The shares are a judgement of the project, not counted from anybody.
 */
final class Mix {

    static final String RECORD = "a receipt is recorded";

    private static final int WHOLE = 100;
    private static final int RECORDS = 10;
    private static final Pattern PIECE = Pattern.compile("href=\"/(pieces/[0-9a-f-]{36})\"");

    private record Share(int percent, String page) {}

    /** With the records, a hundred. */
    private static final List<Share> PAGES = List.of(
            new Share(10, ""),
            new Share(18, "pieces"),
            new Share(18, "pieces/{id}"),
            new Share(8, "bench/now"),
            new Share(8, "buy"),
            new Share(8, "sales"),
            new Share(6, "stall"),
            new Share(5, "supplies"),
            new Share(4, "offers"),
            new Share(3, "expenses"),
            new Share(1, "moves"),
            new Share(1, "moves/next"));

    private final Visitor visitor;
    private final Random random;
    private final List<String> pieces = new ArrayList<>();

    Mix(Visitor visitor, Random random) {
        this.visitor = visitor;
        this.random = random;
    }

    /** Reads the first page of the list of pieces, for the pages of single ones. */
    void lookAround() throws IOException, InterruptedException {
        Matcher links = PIECE.matcher(visitor.get("pieces").body());
        while (links.find()) {
            pieces.add(links.group(1));
        }
        if (pieces.isEmpty()) {
            throw new IllegalStateException("No pieces to look at");
        }
    }

    /** All kinds of steps. */
    static List<String> kinds() {
        return Stream.concat(PAGES.stream().map(Share::page), Stream.of(RECORD)).toList();
    }

    /** The kind of the next step. */
    String next() {
        int at = random.nextInt(WHOLE) - RECORDS;
        for (Share share : PAGES) {
            if (at < 0) {
                break;
            }
            at -= share.percent();
            if (at < 0) {
                return share.page();
            }
        }
        return RECORD;
    }

    /** What must be asked before a record, and is not part of its time: the page with the form. */
    String prepared(String step) throws IOException, InterruptedException {
        return step.equals(RECORD) ? visitor.token("receipts/new") : "";
    }

    /** Does a step and says whether it was answered as it should be. */
    boolean does(String step, String token) throws IOException, InterruptedException {
        if (step.equals(RECORD)) {
            HttpResponse<String> answer = visitor.post("receipts", receipt(token));
            return answer.statusCode() == 303;
        }
        String page = step.equals("pieces/{id}") ? pieces.get(random.nextInt(pieces.size())) : step;
        return visitor.get(page).statusCode() == 200;
    }

    private Map<String, String> receipt(String token) {
        return Map.of(
                "_csrf", token,
                "id", new UUID(random.nextLong(), random.nextLong()).toString(),
                "day", "TODAY",
                "lines[0].kind", "PIECES",
                "lines[0].title", "Tin box " + random.nextInt(WHOLE),
                "lines[0].price", "4.25",
                "lines[0].quantity", "1",
                "tillTotal", "4.25",
                "paidWith", "OWNER",
                "action", "save");
    }
}
