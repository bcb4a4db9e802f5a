package patinary.bringing;

import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.testing.InventedShop;

/** Goes through the pages as the owner does. */
record Hand(MockMvc mvc) {

    private static final Pattern SEAL = Pattern.compile("name=\"seal\" value=\"([0-9a-f]+)\"");
    private static final Pattern DRAFT = Pattern.compile("/sales/bring/([0-9a-f-]{36}).*");

    ResultActions upload(byte[] file) throws Exception {
        MockMultipartFile part = new MockMultipartFile("file", "..\\..\\sales.csv", "text/csv", file);
        return mvc.perform(multipart("/sales/bring").file(part).with(InventedShop.owner()));
    }

    UUID draft(byte[] file) throws Exception {
        return draft(upload(file));
    }

    static UUID draft(ResultActions answer) {
        Matcher id =
                DRAFT.matcher(String.valueOf(answer.andReturn().getResponse().getRedirectedUrl()));
        if (!id.matches()) {
            throw new AssertionError(
                    "No draft: " + answer.andReturn().getResponse().getRedirectedUrl());
        }
        return UUID.fromString(id.group(1));
    }

    ResultActions page(String path) throws Exception {
        return mvc.perform(get(path).with(InventedShop.owner()));
    }

    /** Posts the mapping page for columns in the order of {@link Shape#ENGLISH}. */
    ResultActions map(UUID draft, UUID channel, Map<String, String> more) throws Exception {
        MockHttpServletRequestBuilder request = post("/sales/bring/" + draft);
        Meaning[] columns = {
            Meaning.ORDER,
            Meaning.DATE,
            Meaning.TITLE,
            Meaning.CODE,
            Meaning.QUANTITY,
            Meaning.PRICE,
            Meaning.SHIPPING,
            Meaning.TOTAL,
            Meaning.BUYER
        };
        for (int i = 0; i < columns.length; i++) {
            request.param(MappingAnswers.field(columns[i]), String.valueOf(i));
        }
        Map<String, String> usual = Map.of(
                "encoding",
                "UTF_8",
                "delimiter",
                "COMMA",
                "leadIn",
                "0",
                "header",
                "true",
                "dates",
                "YEAR_MONTH_DAY",
                "numbers",
                "POINT",
                "spread",
                "ONCE",
                "channel",
                channel.toString(),
                "act",
                "save");
        usual.forEach((name, value) -> request.param(name, more.getOrDefault(name, value)));
        more.forEach((name, value) -> {
            if (!usual.containsKey(name)) {
                request.param(name, value);
            }
        });
        return mvc.perform(request.with(InventedShop.owner()));
    }

    ResultActions pick(UUID draft, String row, String pick, String codes) throws Exception {
        return mvc.perform(post("/sales/bring/" + draft + "/rows")
                .param("rows[0].row", row)
                .param("rows[0].pick", pick)
                .param("rows[0].codes", codes)
                .with(InventedShop.owner()));
    }

    String check(UUID draft) throws Exception {
        return page("/sales/bring/" + draft + "/check")
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    ResultActions bring(UUID draft) throws Exception {
        Matcher seal = SEAL.matcher(check(draft));
        return bring(draft, seal.find() ? seal.group(1) : "");
    }

    ResultActions bring(UUID draft, String seal) throws Exception {
        return mvc.perform(
                post("/sales/bring/" + draft + "/check").param("seal", seal).with(InventedShop.owner()));
    }

    ResultActions undo(UUID id) throws Exception {
        return mvc.perform(post("/sales/bring/imports/" + id + "/undo").with(InventedShop.owner()));
    }
}
