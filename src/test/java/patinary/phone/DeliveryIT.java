package patinary.phone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.MessageSource;
import org.springframework.http.ResponseEntity;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.validation.DirectFieldBindingResult;
import patinary.ledger.Check;
import patinary.ledger.Refusal;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.testing.ShopTest;

/** An entry is recorded once, whatever happens to it on the way; the draft on the Idempotency-Key header, section 2. */
@ShopTest
class DeliveryIT {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private MoneyPlaces places;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private DeliveryStore store;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private Refusal refusal;

    @Autowired
    private MessageSource messages;

    @Autowired
    private Turning turning;

    @Autowired
    private Check check;

    private final UUID key = UUID.randomUUID();

    @BeforeEach
    void cashBox() {
        places.save(new MoneyPlace(ProbeController.PLACE, "Cash box", MoneyPlace.Kind.CASH));
    }

    @AfterEach
    void nothingMeanwhile() {
        ProbeController.meanwhile = () -> {};
    }

    @Test
    void isAnsweredWithAReceiptAndEveryRepeatWithTheSame() throws Exception {
        String first = mvc.perform(entry("500"))
                .andExpect(status().isCreated())
                .andExpect(header().string("Location", "/owner-money/" + key))
                .andExpect(header().string("Cache-Control", containsString("no-store")))
                .andExpect(jsonPath("$.key").value(key.toString()))
                .andExpect(jsonPath("$.href").value("/owner-money/" + key))
                .andReturn()
                .getResponse()
                .getContentAsString();
        for (int again = 0; again < 3; again++) {
            mvc.perform(entry("500"))
                    .andExpect(status().isOk())
                    .andExpect(content().json(first));
        }
        assertStored(1);
        assertThat(jdbc.sql("select captured_at from delivery")
                        .query(java.time.OffsetDateTime.class)
                        .single()
                        .toInstant())
                .hasToString("2025-03-01T10:00:00Z");
    }

    @Test
    void theSameKeyWithOtherContentIsRefused() throws Exception {
        mvc.perform(entry("500")).andExpect(status().isCreated());
        mvc.perform(entry("501"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.key").value(key.toString()))
                .andExpect(jsonPath("$.problems[0].words").value(containsString("other content")));
        assertStored(1);
    }

    @Test
    void aKeyBelongsToOneAccount() throws Exception {
        mvc.perform(entry("500")).andExpect(status().isCreated());
        // The entry of somebody else is another one; its document cannot have an id that is taken.
        mvc.perform(unsigned("500").with(user("Wren").roles("OWNER")).with(csrf()))
                .andExpect(status().isConflict())
                .andExpect(jsonPath("$.retry").value(false));
        assertStored(1);
    }

    @Test
    void problemsAreToldBesideTheirFieldsAndTheMendedEntryIsTaken() throws Exception {
        mvc.perform(entry(""))
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.key").value(key.toString()))
                .andExpect(jsonPath("$.retry").value(false))
                .andExpect(jsonPath("$.problems[0].field").value("amount"))
                .andExpect(jsonPath("$.problems[0].words").isNotEmpty());
        assertStored(0);
        mvc.perform(entry("500")).andExpect(status().isCreated());
        assertStored(1);
    }

    @ParameterizedTest
    @CsvSource({"late,422,false", "missing,404,false", "stale,409,false", "bug,500,true"})
    void whatFailsInTheMiddleLeavesNothingBehind(String trouble, int status, boolean retry) throws Exception {
        mvc.perform(entry("500").param("trouble", trouble))
                .andExpect(status().is(status))
                .andExpect(content().contentTypeCompatibleWith("application/json"))
                .andExpect(jsonPath("$.retry").value(retry))
                .andExpect(jsonPath("$.problems[0].words").isNotEmpty());
        assertStored(0);
        mvc.perform(entry("500")).andExpect(status().isCreated());
        assertStored(1);
    }

    @Test
    void whatTheBooksRefuseIsToldInTheirWords() throws Exception {
        mvc.perform(entry("500")).andExpect(status().isCreated());
        jdbc.sql("delete from delivery").update();
        mvc.perform(entry("500"))
                .andExpect(status().isConflict())
                .andExpect(jsonPath("$.problems[0].words").value(containsString("recorded already")));
        assertThat(jdbc.sql("select count(*) from delivery").query(Long.class).single())
                .isZero();
    }

    @ParameterizedTest
    @CsvSource({"not-a-key", "\"not-a-key\"", "8e03978e-40d5-43e8-bc93-6894a57f9324"})
    void aKeyOfAnotherFormIsRefused(String form) throws Exception {
        mvc.perform(post("/probe").with(owner()).header(Delivery.KEY, form).param("amount", "500"))
                .andExpect(status().isBadRequest())
                .andExpect(jsonPath("$.problems[0].words").isNotEmpty());
        assertStored(0);
    }

    @Test
    void aMissingKeyOrOneThatIsNotTheFormsIsRefused() throws Exception {
        mvc.perform(post("/probe").with(owner()).param("amount", "500"))
                .andExpect(status().isBadRequest())
                .andExpect(jsonPath("$.problems[0].words").isNotEmpty());
        mvc.perform(entry("500").param("id", UUID.randomUUID().toString())).andExpect(status().isBadRequest());
        assertStored(0);
    }

    @Test
    void whoIsSignedOutIsToldSoInsteadOfBeingLedAway() throws Exception {
        mvc.perform(unsigned("500").with(csrf()))
                .andExpect(status().isUnauthorized())
                .andExpect(jsonPath("$.reason").value("sign-in"));
        mvc.perform(unsigned("500"))
                .andExpect(status().isUnauthorized())
                .andExpect(header().doesNotExist("Set-Cookie"))
                .andExpect(jsonPath("$.reason").value("sign-in"));
        mvc.perform(get("/phone/lists").accept("application/json"))
                .andExpect(status().isUnauthorized())
                .andExpect(jsonPath("$.reason").value("sign-in"));
        mvc.perform(unsigned("500").with(user("Robin").roles("OWNER")))
                .andExpect(status().isForbidden())
                .andExpect(jsonPath("$.reason").value("token"));
        mvc.perform(unsigned("500").with(user("Finch").roles("ACCOUNTANT")).with(csrf()))
                .andExpect(status().isForbidden())
                .andExpect(jsonPath("$.reason").value("closed"));
        assertStored(0);
    }

    @Test
    void whileItIsBeingRecordedTheSameEntryIsToldToComeBack() throws Exception {
        CountDownLatch inside = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        ProbeController.holdUntil(inside, go);
        CompletableFuture<MockHttpServletResponse> first = CompletableFuture.supplyAsync(() -> answer(entry("500")));
        inside.await();
        mvc.perform(entry("500"))
                .andExpect(status().isConflict())
                .andExpect(jsonPath("$.retry").value(true));
        go.countDown();
        assertThat(first.join().getStatus()).isEqualTo(201);
        mvc.perform(entry("500")).andExpect(status().isOk());
        assertStored(1);
    }

    /** Several programs on one database have nothing between them but the database. */
    @Test
    void manyProgramsThatGetTheSameEntryAtOnceRecordItOnce() {
        Entry entry = new Entry(key, "Robin", "same", null, 1);
        CountDownLatch start = new CountDownLatch(1);
        List<CompletableFuture<Integer>> answers = new ArrayList<>();
        for (int program = 0; program < 6; program++) {
            Deliveries own = new Deliveries(store, transaction, refusal, messages, turning);
            answers.add(CompletableFuture.supplyAsync(() -> {
                await(start);
                return once(own, entry).getStatusCode().value();
            }));
        }
        start.countDown();
        List<Integer> all = answers.stream().map(CompletableFuture::join).toList();
        assertThat(all)
                .containsOnlyOnce(201)
                .allMatch(status -> List.of(200, 201, 409).contains(status));
        assertThat(jdbc.sql("select count(*) from style").query(Long.class).single())
                .isEqualTo(1);
        assertThat(jdbc.sql("select count(*) from delivery").query(Long.class).single())
                .isEqualTo(1);
    }

    @Test
    void theTokenIsForEverybodyAndTheListsForWhoIsSignedIn() throws Exception {
        mvc.perform(get("/phone/token"))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.signedIn").value(false))
                .andExpect(jsonPath("$.token").doesNotExist())
                .andExpect(jsonPath("$.version").isNotEmpty());
        mvc.perform(get("/phone/token").with(owner()))
                .andExpect(jsonPath("$.signedIn").value(true))
                .andExpect(jsonPath("$.header").isNotEmpty())
                .andExpect(jsonPath("$.token").isNotEmpty());
        String tag = mvc.perform(get("/phone/lists").with(owner()))
                .andExpect(status().isOk())
                .andExpect(header().string("Cache-Control", containsString("no-store")))
                .andExpect(jsonPath("$.probe[0].text").value("Oak"))
                .andReturn()
                .getResponse()
                .getHeader("ETag");
        mvc.perform(get("/phone/lists").with(owner()).header("If-None-Match", String.valueOf(tag)))
                .andExpect(status().isNotModified());
    }

    @Test
    void aSignInOnTheWayLeadsBackToThePageThatAskedForIt() throws Exception {
        mvc.perform(get("/phone/sign-in").param("back", "/buy").with(owner())).andExpect(redirectedUrl("/buy"));
        mvc.perform(get("/phone/sign-in").param("back", "//elsewhere.example").with(owner()))
                .andExpect(redirectedUrl("/waiting"));
        mvc.perform(get("/phone/sign-in")).andExpect(status().is3xxRedirection());
    }

    private ResponseEntity<?> once(Deliveries own, Entry entry) {
        return own.once(entry, new DirectFieldBindingResult(new ProbeForm(), "form"), () -> {
            jdbc.sql("insert into style (id, name, version) values (?, ?, 0)")
                    .params(UUID.randomUUID(), "Style " + UUID.randomUUID())
                    .update();
            return new Delivery.Stored("/x", "web.error.home");
        });
    }

    private MockHttpServletRequestBuilder entry(String amount) {
        return unsigned(amount).with(owner());
    }

    private MockHttpServletRequestBuilder unsigned(String amount) {
        return post("/probe")
                .header(Delivery.KEY, '"' + key.toString() + '"')
                .header(Delivery.CAPTURED, "2025-03-01T10:00:00.000Z")
                .accept("application/json")
                .param("amount", amount);
    }

    private MockHttpServletResponse answer(MockHttpServletRequestBuilder request) {
        try {
            return mvc.perform(request).andReturn().getResponse();
        } catch (Exception failed) {
            throw new IllegalStateException(failed);
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    /** One document and one key, or none of either; and the books agree with themselves. */
    private void assertStored(int count) {
        assertThat(jdbc.sql("select count(*) from owner_money")
                        .query(Long.class)
                        .single())
                .isEqualTo(count);
        assertThat(jdbc.sql("select count(*) from delivery").query(Long.class).single())
                .isEqualTo(count);
        assertThat(check.run()).isEmpty();
    }
}
