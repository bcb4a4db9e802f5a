package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static patinary.testing.InventedShop.owner;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.testing.ShopTest;

/** A channel's fuller fee rules on its page. Everything is invented. */
@ShopTest
class ChannelFeesIT {

    private static final UUID CHANNEL = UUID.randomUUID();

    /** What a browser sends of the page: text inputs, the ticked boxes, the chosen options. */
    private static final Pattern INPUT = Pattern.compile("<input[^>]*\\bname=\"(?:rules|version|name|id)[^>]*>");

    private static final Pattern SELECT = Pattern.compile("<select[^>]*name=\"([^\"]+)\".*?</select>", Pattern.DOTALL);

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Channels channels;

    @Autowired
    private ChannelBook book;

    @Autowired
    private MoneyPlaces places;

    private final FeeRule full = new FeeRule(
            LocalDate.of(2025, 7, 1),
            Percent.of("10"),
            Amount.of(30),
            FeeBase.ALL_WITH_TAX,
            Amount.of(50),
            Amount.of(9000),
            Amount.of(10000),
            Percent.of("8"),
            Amount.of(50000),
            Percent.of("5.5"),
            true,
            Percent.of("3"),
            Amount.of(25));

    private final FeeRule simple = new FeeRule(LocalDate.of(2025, 1, 1), Percent.of("9.5"), Amount.of(25));

    @BeforeEach
    void channel() {
        UUID place = UUID.randomUUID();
        places.save(new MoneyPlace(place, "Balance", MoneyPlace.Kind.CHANNEL));
        channels.save(new Channel(CHANNEL, "Invented market", place, false, List.of(simple, full)));
    }

    @Test
    void savingAChannelUnchangedKeepsEveryField() throws Exception {
        String page = mvc.perform(get("/channels/" + CHANNEL).with(owner()))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("??"))))
                .andReturn()
                .getResponse()
                .getContentAsString();
        MockHttpServletRequestBuilder sent =
                post("/channels/" + CHANNEL).with(owner()).with(csrf());
        send(page, sent);
        mvc.perform(sent).andExpect(status().isSeeOther());

        List<FeeRule> kept = book.find(CHANNEL).orElseThrow().fees();
        assertThat(kept).hasSize(2);
        assertSame(kept.get(0), simple);
        assertSame(kept.get(1), full);
    }

    @Test
    void aRuleThatCannotBeIsRefusedBesideItsField() throws Exception {
        mvc.perform(post("/channels/" + CHANNEL)
                        .with(owner())
                        .with(csrf())
                        .param("name", "Invented market")
                        .param("newPlace", "Another balance")
                        .param("rules[0].validFrom", "2025-01-01")
                        .param("rules[0].least", "5")
                        .param("rules[0].most", "4")
                        .param("rules[0].above", "100")
                        .param("rules[0].furtherAbove", "90")
                        .param("rules[0].furtherPercent", "3"))
                .andExpect(status().isUnprocessableEntity())
                .andExpect(content().string(containsString("The most is below the least")))
                .andExpect(content().string(containsString("enter both or neither")))
                .andExpect(content().string(containsString("amount of the step before")));
    }

    private static void assertSame(FeeRule kept, FeeRule was) {
        assertThat(kept)
                .usingRecursiveComparison()
                .withComparatorForType(java.math.BigDecimal::compareTo, java.math.BigDecimal.class)
                .isEqualTo(was);
    }

    private static void send(String page, MockHttpServletRequestBuilder sent) {
        Matcher input = INPUT.matcher(page);
        while (input.find()) {
            String tag = input.group();
            if (!tag.contains("checkbox") || tag.contains("checked")) {
                sent.param(attribute(tag, "name"), attribute(tag, "value"));
            }
        }
        Matcher select = SELECT.matcher(page);
        while (select.find()) {
            Matcher chosen = Pattern.compile("<option[^>]*selected[^>]*>").matcher(select.group());
            sent.param(select.group(1), chosen.find() ? attribute(chosen.group(), "value") : "");
        }
    }

    private static String attribute(String tag, String name) {
        Matcher found = Pattern.compile("\\b" + name + "=\"([^\"]*)\"").matcher(tag);
        return found.find() ? found.group(1) : "";
    }
}
