package patinary.bringing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.test.web.servlet.setup.SecurityMockMvcConfigurers;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.web.context.WebApplicationContext;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/**
 * Mutated files through the pages: no server error, and what comes in is all that was shown or nothing. A short run each time;
 * by hand with {@code -Dpatinary.fuzz.pages=10000}.
 */
@ShopTest
class PageFuzzIT {

    @Autowired
    private WebApplicationContext program;

    private int broughtIn;

    @Test
    void takesWhateverComes() throws Exception {
        int inputs = Integer.getInteger("patinary.fuzz.pages", 30);
        BroughtShop shop = new BroughtShop(program);
        // Not the one of the other tests, which keeps every page until the test has ended.
        Hand hand = new Hand(MockMvcBuilders.webAppContextSetup(program)
                .apply(SecurityMockMvcConfigurers.springSecurity())
                .build());
        Random random = new Random(Long.getLong("patinary.fuzz.seed", 20_250_314));
        Map<String, Long> before = shop.balances();
        long start = System.nanoTime();
        for (int i = 0; i < inputs; i++) {
            if (i % 500 == 499) {
                System.out.println(i + 1 + " files, " + broughtIn + " brought in and taken back");
            }
            one(ReaderFuzz.mutated(random), random, shop, hand);
        }
        if (inputs > 30) {
            System.out.println(inputs + " files, " + broughtIn + " brought in and taken back, "
                    + (System.nanoTime() - start) / 1_000_000 + " ms");
        }
        assertThat(broughtIn).isPositive();
        assertThat(shop.count("sale")).isZero();
        assertThat(shop.count("sales_draft_part")).isZero();
        assertThat(shop.balances()).isEqualTo(before);
    }

    private void one(byte[] file, Random random, BroughtShop shop, Hand hand) throws Exception {
        ResultActions taken = fine(hand.upload(file));
        if (taken.andReturn().getResponse().getStatus() == 422) {
            return;
        }
        UUID draft = Hand.draft(taken);
        Mapping guess = MappingGuess.of(file);
        fine(hand.mvc().perform(map(draft, guess, random, shop)));
        fine(hand.page("/sales/bring/" + draft));
        fine(hand.page("/sales/bring/" + draft + "/rows"));
        fine(hand.pick(
                draft,
                String.valueOf(random.nextInt(9)),
                random.nextBoolean() ? "out" : "supply:" + shop.brushes + ":1",
                random.nextInt(4) == 0 ? "P000" + random.nextInt(6) : ""));
        fine(hand.bring(draft));
        long sales = shop.count("sale");
        long imported = shop.count("sales_import_sale");
        assertThat(imported).isEqualTo(sales);
        if (sales > 0) {
            broughtIn++;
            assertThat(shop.count("sales_draft where id = '" + draft + "'")).isZero();
            assertThat(shop.count("sales_import where undone_at is null and sales = " + sales))
                    .isEqualTo(1);
            fine(hand.undo(draft));
            assertThat(shop.count("sale")).isZero();
        } else {
            fine(hand.mvc().perform(post("/sales/bring/" + draft + "/remove").with(InventedShop.owner())));
        }
    }

    /** What was guessed, with what is open said at random, and now and then something else altogether. */
    private static MockHttpServletRequestBuilder map(UUID draft, Mapping guess, Random random, BroughtShop shop) {
        MappingForm form = MappingForm.of(guess);
        MockHttpServletRequestBuilder request = post("/sales/bring/" + draft)
                .param("encoding", form.encoding)
                .param("delimiter", form.delimiter)
                .param("leadIn", random.nextInt(20) == 0 ? "x" : form.leadIn)
                .param("header", String.valueOf(form.header))
                .param("dates", form.dates.isEmpty() ? DateForm.values()[random.nextInt(4)].name() : form.dates)
                .param("numbers", form.numbers.isEmpty() ? NumberForm.values()[random.nextInt(2)].name() : form.numbers)
                .param("spread", random.nextBoolean() ? "ONCE" : "EACH_ROW")
                .param("channel", shop.market.toString())
                .param("name", random.nextInt(50) == 0 ? "Saved " + random.nextInt(3) : "")
                .param("act", random.nextInt(10) == 0 ? "look" : "save");
        boolean moved = random.nextInt(10) == 0;
        for (int i = 0; i < form.columns.size(); i++) {
            request.param("columns[" + i + "]", moved ? String.valueOf(random.nextInt(12)) : form.columns.get(i));
        }
        return request.with(InventedShop.owner());
    }

    private static ResultActions fine(ResultActions answer) {
        assertThat(answer.andReturn().getResponse().getStatus()).isLessThan(500);
        return answer;
    }
}
