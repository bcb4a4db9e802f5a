package patinary.fuzz;

import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.request.AbstractMockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMultipartHttpServletRequestBuilder;
import org.springframework.web.util.UriUtils;
import patinary.testing.InventedShop;
import patinary.testing.PageShape;

/** One request, made of a form or a route and answers to it. */
record Attempt(
        boolean change,
        String address,
        boolean files,
        Map<String, List<String>> answers,
        Map<String, byte[]> sent,
        boolean phone) {

    /** A form with one to three answers that nobody would give, or with its fields in disorder. */
    static Attempt of(FoundForm form, Answers answers) {
        Map<String, List<String>> said = new LinkedHashMap<>();
        Map<String, byte[]> sent = new LinkedHashMap<>();
        for (FoundForm.Field field : form.fields()) {
            if (field.type().equals("file")) {
                sent.put(field.name(), answers.file());
            } else if (!field.type().equals("checkbox") || answers.once(2)) {
                said.put(field.name(), List.of(answers.likely(field)));
            }
        }
        spoil(said, answers);
        String address = answers.once(25) ? misspelt(form.action(), answers) : form.action();
        return new Attempt(true, address, form.files(), said, sent, answers.once(8));
    }

    /** A route with anything in its path and its fields. */
    static Attempt of(Route route, Answers answers) {
        Map<String, List<String>> said = new LinkedHashMap<>();
        Map<String, byte[]> sent = new LinkedHashMap<>();
        for (FoundForm.Field field : route.fields()) {
            if (field.type().equals("file")) {
                sent.put(field.name(), answers.file());
            } else if (!answers.once(4)) {
                said.put(field.name(), List.of(answers.once(3) ? answers.hostile() : answers.likely(field)));
            }
        }
        return new Attempt(
                route.change(),
                PageShape.filled(
                        route.pattern(), variable -> segment(answers.once(3) ? answers.hostile() : answers.place())),
                route.takesFiles(),
                said,
                sent,
                answers.once(8));
    }

    private static void spoil(Map<String, List<String>> said, Answers answers) {
        List<String> names = new ArrayList<>(said.keySet());
        int spoilt = answers.random().nextInt(4);
        for (int i = 0; i < spoilt && !names.isEmpty(); i++) {
            String name = answers.one(names);
            switch (answers.random().nextInt(12)) {
                case 0 -> said.remove(name);
                case 1 -> said.put(name, List.of(answers.hostile(), answers.hostile()));
                case 2 ->
                    said.put(
                            name + answers.one(List.of("[0]", "[9]", "[300]", ".x", "[", "[a]", ".class")),
                            List.of("1"));
                case 3 -> said.put("unheard" + answers.hostile(), List.of(answers.hostile()));
                default -> said.put(name, List.of(answers.hostile()));
            }
        }
    }

    private static String misspelt(String action, Answers answers) {
        List<String> parts = new ArrayList<>(List.of(action.split("/")));
        if (parts.size() > 1) {
            parts.set(1 + answers.random().nextInt(parts.size() - 1), segment(answers.hostile()));
        }
        return parts.size() > 1 ? String.join("/", parts) : action;
    }

    private static String segment(String text) {
        String encoded = UriUtils.encode(text, StandardCharsets.UTF_8);
        return encoded.isEmpty()
                ? "-"
                : encoded.substring(0, Math.min(encoded.length(), 3000)).replaceAll("%.?$", "");
    }

    AbstractMockHttpServletRequestBuilder<?> request(Answers random) {
        URI uri = URI.create(address.isEmpty() ? "/" : address.replace(" ", "%20"));
        AbstractMockHttpServletRequestBuilder<?> request;
        if (files) {
            MockMultipartHttpServletRequestBuilder parts = multipart(uri);
            sent.forEach(
                    (name, file) -> parts.file(new MockMultipartFile(name, "../a\u0000\".jpg", "image/jpeg", file)));
            request = parts;
        } else {
            request = change ? post(uri) : get(uri);
        }
        answers.forEach((name, values) -> request.param(name, values.toArray(String[]::new)));
        if (phone) {
            String key = answers.containsKey("id") && !answers.get("id").isEmpty() && !random.once(4)
                    ? answers.get("id").get(0)
                    : random.id();
            request.header("Idempotency-Key", random.once(9) ? random.hostile() : "\"" + key + "\"")
                    .header("X-Captured-At", random.once(2) ? "2025-03-01T10:00:00Z" : random.hostile())
                    .header("X-Form-Version", random.once(2) ? "1" : random.hostile())
                    .accept("application/json");
        }
        return request.with(InventedShop.owner());
    }

    /** For whoever reads of a fault. */
    @Override
    public String toString() {
        String said = answers.toString();
        return (change ? "POST " : "GET ")
                + address
                + (phone ? " by phone " : " ")
                + said.substring(0, Math.min(said.length(), 1500));
    }
}
