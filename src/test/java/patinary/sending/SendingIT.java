package patinary.sending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import patinary.shop.CurrentShop;
import patinary.testing.ShopTest;
import patinary.testing.Trestle;
import patinary.web.Window;

/** From sold to sent, and what the mail lost. Buyers, carriers and prices are invented. */
@ShopTest
class SendingIT {

    @Autowired
    private ApplicationContext program;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private SendingList list;

    @Autowired
    private Losses losses;

    @Autowired
    private CurrentShop shop;

    private Trestle trestle;
    private UUID tray;
    private LocalDate today;

    @BeforeEach
    void stock() {
        trestle = new Trestle(program);
        tray = trestle.piece("Tin tray", "Box 1");
        trestle.piece("Enamel jug", "Shelf 2");
        today = shop.today();
    }

    @Test
    void whatIsSoldWaitsUntilItIsSent() throws Exception {
        UUID jug = sell("P0002", today.minusDays(2));
        UUID sale = sell("P0001", today.minusDays(5));
        assertThat(waiting()).containsExactly(sale, jug);
        page("/sending")
                .andExpect(content().string(containsString("5 days ago")))
                .andExpect(content().string(containsString("Tin tray")))
                .andExpect(content().string(containsString("lies in Box 1")))
                .andExpect(content().string(not(containsString("??"))));

        say("/sending/" + sale + "/packed", "packed", "true");
        assertThat(head(sale).packedOn()).isEqualTo(today);
        say("/sending/" + sale + "/packed", "packed", "false");
        assertThat(head(sale).packedOn()).isNull();

        say("/sending/" + sale + "/sent");
        assertThat(waiting()).containsExactly(jug);
        assertThat(head(sale).postedOn()).isEqualTo(today);
        assertThat(head(sale).packedOn()).as("what is sent was packed").isEqualTo(today);
        assertThat(list.sentToday()).hasSize(1);

        say("/sending/" + sale + "/sent", "sent", "false");
        assertThat(waiting()).containsExactly(sale, jug);
        mvc.perform(post("/sales/" + sale + "/remove").with(owner())).andExpect(status().is3xxRedirection());
        assertThat(count("sending")).as("undone with its sale").isZero();
    }

    @Test
    void whatHerTableSaysIsRecordedWithOneTapAndOnce() throws Exception {
        UUID sale = sell("P0001", today);
        UUID carrier = carrier();
        mvc.perform(post("/pieces/" + tray + "/size")
                        .with(owner())
                        .param("size", "9 x 6 x 1 in")
                        .param("weight", "600 g"))
                .andExpect(status().is3xxRedirection());
        page("/sending/" + sale)
                .andExpect(content().string(containsString("value=\"9 x 6 x 1 in\"")))
                .andExpect(content().string(containsString("value=\"600 g\"")));

        keep(sale, 0, carrier, "2 lb", "12 x 9 x 6 in").andExpect(status().is3xxRedirection());
        ToSend kept = list.find(sale).orElseThrow();
        assertThat(kept.sale().weightG()).isEqualByComparingTo(new BigDecimal("907.18474"));
        assertThat(kept.cost())
                .hasValueSatisfying(cost -> assertThat(cost.minor()).isEqualTo(820));
        assertThat(kept.isCostOpen()).isTrue();
        assertThat(kept.sale().sentFrom()).isEqualTo("Invented market town");
        page("/sending/" + sale).andExpect(content().string(containsString("value=\"Invented market town\"")));
        page("/sending").andExpect(content().string(containsString("8.20")));

        UUID document = UUID.randomUUID();
        for (int twice = 0; twice < 2; twice++) {
            say("/sending/" + sale + "/postage", "carrier", carrier.toString(), "document", document.toString());
        }
        assertThat(postings("POSTAGE")).containsExactly(Map.entry("carriage", 820L));
        assertThat(postings("MONEY").get("")).isEqualTo(2000 - 820);
        assertThat(list.find(sale).orElseThrow().isCostOpen()).isFalse();

        keep(sale, 0, carrier, "3 lb", "").andExpect(status().isConflict());
        keep(sale, 1, carrier, "0 g", "12 x 9 in")
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("A weight is above zero")))
                .andExpect(content().string(containsString("A size is three lengths")))
                .andExpect(content().string(containsString("value=\"12 x 9 in\"")));
        say("/carriers/" + carrier + "/remove");
        assertThat(head(sale).service()).isNull();
    }

    @Test
    void aTableThatCannotBeReadIsKeptAsTyped() throws Exception {
        mvc.perform(post("/carriers")
                        .with(owner())
                        .param("id", UUID.randomUUID().toString())
                        .param("name", "")
                        .param("lines[0].from", "2026-01-01")
                        .param("lines[0].upTo", "four")
                        .param("lines[0].cost", "8.20"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("Give it a name")))
                .andExpect(content().string(containsString("value=\"four\"")));
        assertThat(count("carrier_service")).isZero();
    }

    @Test
    void whatTheMailLostIsClaimedAndPaidAsOtherIncome() throws Exception {
        UUID sale = sell("P0001", today.minusDays(30));
        UUID loss = UUID.randomUUID();
        loss("/claims/new?sale=" + sale, loss, 0, today.minusDays(3), "").andExpect(status().is3xxRedirection());
        assertThat(losses.find(loss).orElseThrow().claim()).isEqualTo(Loss.Claim.OPEN);
        page("/claims").andExpect(content().string(containsString("15.00")));
        page("/claims/" + loss)
                .andExpect(content().string(containsString("nothing comes back")))
                .andExpect(content().string(not(containsString("??"))));
        long before = postings("COST_OF_PIECES").get("");

        mvc.perform(post("/claims/" + loss + "/paid").with(owner()).param("amount", "x"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("value=\"x\"")));
        UUID document = UUID.randomUUID();
        for (int twice = 0; twice < 2; twice++) {
            say(
                    "/claims/" + loss + "/paid",
                    "id",
                    document.toString(),
                    "date",
                    today.toString(),
                    "amount",
                    "12",
                    "place",
                    trestle.cash.toString());
        }
        assertThat(losses.find(loss).orElseThrow().claim()).isEqualTo(Loss.Claim.PAID);
        assertThat(postings("OTHER_INCOME")).containsExactly(Map.entry("carrier compensation", -1200L));
        assertThat(postings("COST_OF_PIECES").get(""))
                .as("it was sold, so its cost stays")
                .isEqualTo(before);
        assertThat(losses.sums()).isEqualTo(new Losses.Sums(0, 0, 1, 1200, 0, 0));

        say("/other-income/" + document + "/remove", "version", "0");
        assertThat(losses.find(loss).orElseThrow().claim())
                .as("as long as the income is there")
                .isEqualTo(Loss.Claim.OPEN);
        loss("/claims/" + loss + "/edit", loss, 1, today.minusDays(3), today.toString())
                .andExpect(status().is3xxRedirection());
        assertThat(losses.sums()).isEqualTo(new Losses.Sums(0, 0, 0, 0, 1, 1500));
        assertThat(losses.page(Window.of(1)).rows()).hasSize(1);
        say("/claims/" + loss + "/remove");
        assertThat(count("mail_loss")).isZero();
    }

    @Test
    void aClaimIsWholeAndNoOlderThanItsSale() throws Exception {
        UUID sale = sell("P0001", today.minusDays(3));
        loss("/claims/new?sale=" + sale, UUID.randomUUID(), 0, today.minusDays(4), "")
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("between the sale and today")));
        mvc.perform(post("/claims/new?sale=" + sale)
                        .with(owner())
                        .param("noticedOn", today.toString())
                        .param("refusedOn", today.toString())
                        .param("claimed", "5"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("When was it claimed?")))
                .andExpect(content().string(containsString("Only what was claimed can be refused")));
        assertThat(count("mail_loss")).isZero();
    }

    private java.util.List<UUID> waiting() {
        return list.waiting(Window.of(1)).rows().stream()
                .map(row -> row.sale().saleId())
                .toList();
    }

    private ToSend.Head head(UUID sale) {
        return list.find(sale).orElseThrow().sale();
    }

    private UUID carrier() throws Exception {
        UUID id = UUID.randomUUID();
        mvc.perform(post("/carriers")
                        .with(owner())
                        .param("id", id.toString())
                        .param("name", "Small parcel")
                        .param("place", trestle.cash.toString())
                        .param("lines[0].from", "2025-01-01")
                        .param("lines[0].upTo", "1 lb")
                        .param("lines[0].cost", "5.10")
                        .param("lines[1].from", "2025-01-01")
                        .param("lines[1].upTo", "4 lb")
                        .param("lines[1].size", "14 x 12 x 8 in")
                        .param("lines[1].cost", "8.20")
                        .param("lines[2].from", "2025-01-01"))
                .andExpect(status().is3xxRedirection());
        return id;
    }

    private ResultActions keep(UUID sale, long version, UUID carrier, String weight, String size) throws Exception {
        return mvc.perform(post("/sending/" + sale)
                .with(owner())
                .param("version", Long.toString(version))
                .param("destination", "Invented Lane 4")
                .param("sentFrom", "Invented market town")
                .param("weight", weight)
                .param("size", size)
                .param("service", carrier.toString())
                .param("tracking", "INVENTED-1"));
    }

    private ResultActions loss(String path, UUID id, long version, LocalDate noticed, String refused) throws Exception {
        return mvc.perform(post(path)
                .with(owner())
                .param("id", id.toString())
                .param("version", Long.toString(version))
                .param("what", "LOST")
                .param("noticedOn", noticed.toString())
                .param("claimedOn", today.toString())
                .param("claimed", "15")
                .param("refusedOn", refused));
    }

    private UUID sell(String code, LocalDate day) throws Exception {
        UUID id = UUID.randomUUID();
        say(
                "/sales/new",
                "id",
                id.toString(),
                "date",
                day.toString(),
                "channel",
                trestle.stall.toString(),
                "buyer",
                "An invented buyer",
                "lines[0].codes",
                code,
                "lines[0].price",
                "20");
        return id;
    }

    private ResultActions page(String path) throws Exception {
        return mvc.perform(get(path).with(owner())).andExpect(status().isOk());
    }

    private void say(String path, String... parameters) throws Exception {
        var request = post(path).with(owner());
        for (int i = 0; i < parameters.length; i += 2) {
            request.param(parameters[i], parameters[i + 1]);
        }
        mvc.perform(request).andExpect(status().is3xxRedirection());
    }

    private long count(String table) {
        return jdbc.sql("select count(*) from " + table).query(Long.class).single();
    }

    private Map<String, Long> postings(String account) {
        Map<String, Long> sums = new TreeMap<>();
        jdbc.sql("select coalesce(category, '') as category, sum(amount_minor) as amount from posting where account = ?"
                        + " group by category having sum(amount_minor) <> 0")
                .param(account)
                .query(row -> {
                    sums.put(row.getString("category"), row.getLong("amount"));
                });
        return sums;
    }
}
