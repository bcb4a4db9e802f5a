package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.ledger.Check;
import patinary.testing.InventedShop;
import patinary.testing.PageForm;
import patinary.testing.ShopTest;
import patinary.testing.Visitor;

/** Sixteen devices of one shop at the same moment, through HTTP: each answer is either stored, or told as not stored. */
@ShopTest
class SixteenAtOnceIT {

    private static final int DEVICES = 16;
    private static final String DAY = "2025-03-10";

    @LocalServerPort
    private int port;

    @Autowired
    private ApplicationContext program;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Check check;

    private final Visitor device = new Visitor();
    private InventedGoods goods;

    @BeforeEach
    void signIn() throws Exception {
        goods = new InventedGoods(program);
        Map<String, String> who = Map.of("name", InventedShop.OWNER, "password", InventedShop.PASSWORD);
        // One sign-in and its cookie for all: what is tried here is not the sign-in.
        device.visit(port);
        assertThat(device.fill("sign-in", "sign-in", who).statusCode()).isBetween(302, 303);
    }

    @Test
    void onePieceIsSoldOnceAndTheOthersAreToldSo() throws Exception {
        List<HttpResponse<String>> answers = atOnce(number -> sale(UUID.randomUUID(), "P0001"), "stall");

        assertThat(answers.stream().filter(answer -> answer.statusCode() == 303))
                .as("sold")
                .hasSize(1);
        assertThat(answers.stream().filter(answer -> answer.statusCode() == 422))
                .as("told that it is sold already")
                .hasSize(DEVICES - 1);
        assertThat(count("sale")).isEqualTo(1);
        assertThat(check.run()).isEmpty();
    }

    @Test
    void whatIsSentSixteenTimesIsStoredOnce() throws Exception {
        UUID id = UUID.randomUUID();

        List<HttpResponse<String>> answers = atOnce(number -> sale(id, "P0001"), "stall");

        assertThat(answers).extracting(HttpResponse::statusCode).containsOnly(303);
        assertThat(count("sale")).isEqualTo(1);
        assertThat(check.run()).isEmpty();
    }

    /** All change the same version: one goes through, the others see both versions, and nothing is lost in silence. */
    @Test
    void ofSixteenChangesOneIsStoredAndFifteenSeeBothVersions() throws Exception {
        UUID id = UUID.randomUUID();
        assertThat(device.fill("stall", "stall", sale(id, "P0001")).statusCode())
                .isEqualTo(303);
        String page = "sales/" + id + "/edit";
        Map<String, String> form = PageForm.on(device.get(page).body()).stream()
                .filter(one -> one.answers().containsKey("version"))
                .findFirst()
                .orElseThrow()
                .answers();

        List<HttpResponse<String>> answers = atOnce(
                number -> {
                    Map<String, String> mine = new LinkedHashMap<>(form);
                    mine.put("note", "typed on device " + number);
                    return mine;
                },
                page);

        assertThat(answers.stream().filter(answer -> answer.statusCode() == 303))
                .hasSize(1);
        assertThat(answers.stream().filter(answer -> answer.statusCode() == 409))
                .hasSize(DEVICES - 1)
                .allSatisfy(answer ->
                        assertThat(answer.body()).contains("typed on device", "name=\"take\" value=\"note\""));
        String stored = jdbc.sql("select note from document where id = ?")
                .param(id)
                .query(String.class)
                .single();
        int winner = answers.indexOf(answers.stream()
                .filter(answer -> answer.statusCode() == 303)
                .findFirst()
                .orElseThrow());
        assertThat(stored).isEqualTo("typed on device " + winner);
    }

    private interface Typed {
        Map<String, String> on(int number);
    }

    private List<HttpResponse<String>> atOnce(Typed typed, String target) throws Exception {
        String token = PageForm.on(device.get("stall").body()).stream()
                .map(form -> form.answers().get("_csrf"))
                .findFirst()
                .orElseThrow();
        CountDownLatch go = new CountDownLatch(1);
        ExecutorService people = Executors.newFixedThreadPool(DEVICES);
        try {
            List<Future<HttpResponse<String>>> asked = new ArrayList<>();
            for (int number = 0; number < DEVICES; number++) {
                Map<String, String> answers = new LinkedHashMap<>(typed.on(number));
                answers.put("_csrf", token);
                asked.add(people.submit(() -> {
                    go.await();
                    return device.post(target, answers);
                }));
            }
            go.countDown();
            List<HttpResponse<String>> answers = new ArrayList<>();
            for (Future<HttpResponse<String>> one : asked) {
                answers.add(one.get(120, TimeUnit.SECONDS));
            }
            return answers;
        } finally {
            people.shutdownNow();
        }
    }

    private Map<String, String> sale(UUID id, String codes) {
        Map<String, String> answers = new LinkedHashMap<>();
        answers.put("id", id.toString());
        answers.put("codes", codes);
        answers.put("price", "45");
        answers.put("channel", goods.stall.toString());
        answers.put("place", goods.cash.toString());
        answers.put("date", DAY);
        return answers;
    }

    private int count(String table) {
        return jdbc.sql("select count(*) from " + table).query(Integer.class).single();
    }
}
