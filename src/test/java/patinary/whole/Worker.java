package patinary.whole;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import patinary.testing.Visitor;

/**
 * One person at one device who does one thing after another until nobody answers any more: buys, works at the bench, sells,
 * delivers from a phone, takes pictures, brings a file of sales in. What is answered as stored is written down in {@link Told}.
 */
final class Worker implements Runnable {

    private static final String DAY = "2025-03-01";
    private static final Pattern CODE = Pattern.compile("\\bP\\d{4,}\\b");
    private static final Pattern DRAFT = Pattern.compile(".*/sales/bring/([0-9a-f-]{36})");
    private static final Pattern SEAL = Pattern.compile("name=\"seal\" value=\"([0-9a-f]+)\"");
    private static final byte[] NO_PICTURE = {};

    private final Visitor visitor;
    private final Told told;
    private final Random random;
    private final String channel;

    Worker(Visitor visitor, Told told, Random random, String channel) {
        this.visitor = visitor;
        this.told = told;
        this.random = random;
        this.channel = channel;
    }

    @Override
    public void run() {
        try {
            String token = visitor.deliveryToken();
            resend(token);
            while (true) {
                act(token);
            }
        } catch (IOException gone) {
            told.unanswered.incrementAndGet();
            told.ends.add(gone.toString());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } catch (RuntimeException failed) {
            told.ends.add(failed.toString());
            // A page that came half, or a form that a dying program no longer gave: told apart by what it says.
            if (!String.valueOf(failed.getMessage()).startsWith("No form on ")) {
                told.wrong.add(failed.toString());
            }
        }
    }

    /** Does so many things, and then sends once more what it was told to send later. */
    void work(int times) throws IOException, InterruptedException {
        String token = visitor.deliveryToken();
        for (int i = 0; i < times; i++) {
            act(token);
        }
        resend(token);
    }

    private void act(String token) throws IOException, InterruptedException {
        switch (random.nextInt(10)) {
            case 0, 1, 2 -> buy();
            case 3, 4 -> deliver(entry("stall", sale()), token);
            case 5 -> deliver(entry("buy", purchase()), token);
            case 6 -> bench();
            case 7 -> photo(token);
            case 8 -> sell();
            default -> bringIn();
        }
    }

    /** First what nobody answered before the program died, then some of what has its receipt: it must be the same. */
    private void resend(String token) throws IOException, InterruptedException {
        for (Told.Entry entry = told.waiting.poll(); entry != null; entry = told.waiting.poll()) {
            deliver(entry, token);
            told.repeated.incrementAndGet();
        }
        for (int i = 0; i < 2 && !told.delivered.isEmpty(); i++) {
            Told.Entry entry = told.delivered.poll();
            if (entry != null) {
                deliver(entry, token);
                told.repeated.incrementAndGet();
            }
        }
    }

    private void buy() throws IOException, InterruptedException {
        Map<String, String> answers = new LinkedHashMap<>();
        UUID id = UUID.randomUUID();
        answers.put("id", id.toString());
        answers.put("day", "OTHER");
        answers.put("date", DAY);
        answers.put("lines[0].kind", "PIECES");
        answers.put("lines[0].title", unique("Tin box"));
        answers.put("lines[0].price", "4.25");
        answers.put("lines[0].quantity", "1");
        answers.put("tillTotal", "4.25");
        answers.put("paidWith", "OWNER");
        answers.put("action", "save");
        if (stored(id, visitor.fill("receipts/new", "receipts", answers))) {
            HttpResponse<String> page = visitor.get("receipts/" + id);
            Matcher code = CODE.matcher(page.body());
            if (code.find()) {
                told.pieces.add(code.group());
            } else {
                refused("receipt " + id + " without its piece", page);
            }
        }
    }

    private void bench() throws IOException, InterruptedException {
        UUID id = UUID.randomUUID();
        Map<String, String> answers = new LinkedHashMap<>();
        answers.put("id", id.toString());
        answers.put("day", "OTHER");
        answers.put("date", DAY);
        answers.put("minutes", "15");
        answers.put("done", unique("Sanded"));
        stored(id, visitor.fill("bench/new", "bench/new", answers));
    }

    private void sell() throws IOException, InterruptedException {
        String code = told.pieces.poll();
        if (code != null) {
            UUID id = UUID.randomUUID();
            Map<String, String> answers = new LinkedHashMap<>();
            answers.put("id", id.toString());
            answers.put("version", "0");
            answers.put("date", "2025-03-02");
            answers.put("channel", channel);
            answers.put("order", unique("O"));
            answers.put("lines[0].title", "Tin box");
            answers.put("lines[0].codes", code);
            answers.put("lines[0].price", "12.00");
            stored(id, visitor.fill("sales/new", "sales/new", answers));
        }
    }

    private Map<String, String> sale() {
        Map<String, String> answers = new LinkedHashMap<>();
        String code = told.pieces.poll();
        if (code != null) {
            answers.put("codes", code);
            answers.put("price", "11.00");
            answers.put("channel", channel);
            answers.put("date", "2025-03-02");
        }
        return answers;
    }

    private Map<String, String> purchase() {
        Map<String, String> answers = new LinkedHashMap<>();
        answers.put("things[0].what", unique("Crate"));
        answers.put("things[0].price", "3.00");
        answers.put("tillTotal", "3.00");
        answers.put("paidWith", "OWNER");
        return answers;
    }

    private static Told.Entry entry(String path, Map<String, String> answers) {
        UUID key = UUID.randomUUID();
        if (!answers.isEmpty()) {
            answers.put("id", key.toString());
        }
        return new Told.Entry(key, path, answers, NO_PICTURE);
    }

    private void photo(String token) throws IOException, InterruptedException {
        UUID key = UUID.randomUUID();
        deliver(new Told.Entry(key, "photos", Map.of("id", key.toString()), picture()), token);
    }

    private void deliver(Told.Entry entry, String token) throws IOException, InterruptedException {
        if (entry.answers().isEmpty()) {
            return;
        }
        try {
            HttpResponse<String> answer = entry.picture().length == 0
                    ? visitor.deliver(entry.path(), entry.key(), token, entry.answers())
                    : visitor.deliver(entry.path(), entry.key(), token, entry.answers(), entry.picture());
            heard(entry, answer);
        } catch (IOException silence) {
            told.waiting.add(entry);
            throw silence;
        }
    }

    private void heard(Told.Entry entry, HttpResponse<String> answer) {
        if (answer.statusCode() >= 500 || answer.statusCode() == 409) {
            told.notNow.add(answer.statusCode());
            told.waiting.add(entry);
        } else if (answer.statusCode() != 200 && answer.statusCode() != 201) {
            told.wrong.add(entry.path() + " answered " + answer.statusCode() + ": " + answer.body());
        } else {
            String first = told.receipts.putIfAbsent(entry.key(), answer.body());
            if (first != null && (!first.equals(answer.body()) || answer.statusCode() != 200)) {
                told.wrong.add("not the first receipt: " + first + " then " + answer.body());
            }
            told.delivered.add(entry);
            (entry.picture().length == 0 ? told.documents : told.photos).put(entry.key(), entry.path());
        }
    }

    /** A file of two sales, or of as many pieces as there are. */
    private void bringIn() throws IOException, InterruptedException {
        StringBuilder file = new StringBuilder("order,date,title,code,quantity,price\n");
        int sales = 0;
        for (String code = told.pieces.poll(); code != null; code = sales < 2 ? told.pieces.poll() : null) {
            sales++;
            file.append(unique("B")).append(",2025-03-02,Tin box,").append(code).append(",1,9.50\n");
        }
        if (sales == 0) {
            return;
        }
        HttpResponse<String> taken = visitor.upload(
                "sales/bring", "sales/bring", "sales.csv", file.toString().getBytes(StandardCharsets.UTF_8));
        Matcher draft = DRAFT.matcher(taken.headers().firstValue("Location").orElse(""));
        if (taken.statusCode() != 303 || !draft.matches()) {
            refused("sales/bring", taken);
            return;
        }
        String page = "sales/bring/" + draft.group(1);
        HttpResponse<String> mapped = visitor.fill(page, page, mapping());
        HttpResponse<String> check = visitor.get(page + "/check");
        Matcher seal = SEAL.matcher(check.body());
        if (mapped.statusCode() != 303 || !seal.find()) {
            refused(page, mapped.statusCode() == 303 ? check : mapped);
            return;
        }
        HttpResponse<String> in = visitor.fill(page + "/check", page + "/check", Map.of("seal", seal.group(1)));
        if (in.headers().firstValue("Location").orElse("").contains("/imports/")) {
            told.imports.put(UUID.fromString(draft.group(1)), sales);
        } else if (in.statusCode() != 303) {
            refused(page, in);
        }
    }

    private Map<String, String> mapping() {
        Map<String, String> answers = new LinkedHashMap<>();
        answers.put("encoding", "UTF_8");
        answers.put("delimiter", "COMMA");
        answers.put("leadIn", "0");
        answers.put("header", "true");
        answers.put("dates", "YEAR_MONTH_DAY");
        answers.put("numbers", "POINT");
        answers.put("spread", "ONCE");
        answers.put("channel", channel);
        answers.put("act", "save");
        // By the places of their meanings: order, date, title, code, quantity, price.
        for (int column = 0; column < 6; column++) {
            answers.put("columns[" + column + "]", String.valueOf(column));
        }
        return answers;
    }

    private boolean stored(UUID id, HttpResponse<String> answer) {
        if (answer.statusCode() == 303) {
            told.documents.put(id, "form");
            return true;
        }
        refused(String.valueOf(answer.uri()), answer);
        return false;
    }

    /** A dying program may say that it failed; anything else that is no success was not meant to be. */
    private void refused(String what, HttpResponse<String> answer) {
        if (answer.statusCode() < 500) {
            told.wrong.add(what + " answered " + answer.statusCode() + ": " + answer.body());
        } else {
            told.notNow.add(answer.statusCode());
        }
    }

    private String unique(String what) {
        return what + " " + told.number.incrementAndGet();
    }

    /** Each picture is another one. */
    private byte[] picture() throws IOException {
        BufferedImage picture = new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = picture.createGraphics();
        for (int line = 0; line < 40; line++) {
            pen.setColor(new Color(random.nextInt(0x1000000)));
            pen.drawLine(0, line, 60, line);
        }
        pen.dispose();
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        ImageIO.write(picture, "jpg", file);
        return file.toByteArray();
    }
}
