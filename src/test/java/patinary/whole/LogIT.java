package patinary.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import jakarta.servlet.http.Cookie;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import patinary.testing.InventedShop;
import patinary.testing.ShopTest;

/** What the log says of who came and was refused, and what it never says (OWASP ASVS 5.0, V16.2 to V16.4). */
@ShopTest
@ExtendWith(OutputCaptureExtension.class)
class LogIT {

    private static final String WRONG = "seven herons on one leg";
    private static final String TYPED_AS_NAME = "a password in the wrong box";

    @Autowired
    private MockMvc mvc;

    @Test
    void tellsWhoCameFromWhereAndNoSecret(CapturedOutput log) throws Exception {
        MockHttpServletResponse in = send(signIn(InventedShop.OWNER, InventedShop.PASSWORD));
        send(signIn(InventedShop.OWNER, WRONG));
        send(signIn(TYPED_AS_NAME, WRONG));
        send(post("/year/2024/seal/open").with(InventedShop.owner()).param("password", WRONG));
        MockHttpServletResponse link =
                send(post("/shop/accountant").with(InventedShop.owner()).param("name", "An accountant"));

        assertThat(log.getAll())
                .contains("Signed in: " + InventedShop.OWNER + " from 127.0.0.1")
                .contains("Sign-in refused from 127.0.0.1")
                .doesNotContain(InventedShop.PASSWORD, WRONG, TYPED_AS_NAME, "{argon2", "$argon2", "password_hash")
                .doesNotContain(secrets(in))
                .doesNotContain(secrets(link));
    }

    @Test
    void tellsWhoWasRefusedWhatInOneLine(CapturedOutput log) throws Exception {
        send(get("/shop").with(user("Kim\r\n2025-01-01 forged").roles("HELPER")));
        send(post("/receipts").with(user(InventedShop.OWNER).roles("OWNER")));

        assertThat(log.getAll().lines().filter(line -> line.contains("Refused to")))
                .anyMatch(line -> line.contains("GET /shop") && line.contains("Kim | 2025-01-01 forged"))
                .anyMatch(line -> line.contains("POST /receipts"));
        assertThat(log.getAll().lines()).noneMatch(line -> line.startsWith("2025-01-01 forged"));
    }

    @Test
    void aLineBreakOfSomebodyElseStartsNoLine(CapturedOutput log) {
        LoggerFactory.getLogger(LogIT.class)
                .warn("Typed: {}", "one\nINVENTED two\r\nINVENTED three\u2028INVENTED four");

        assertThat(log.getAll()).contains("one | INVENTED two | INVENTED three | INVENTED four");
    }

    private static String[] secrets(MockHttpServletResponse answer) {
        List<String> secrets = new java.util.ArrayList<>();
        for (Cookie cookie : answer.getCookies()) {
            secrets.add(cookie.getValue());
        }
        secrets.add("for-the-accountant/");
        return secrets.toArray(String[]::new);
    }

    private static MockHttpServletRequestBuilder signIn(String name, String password) {
        return post("/sign-in").with(csrf()).param("name", name).param("password", password);
    }

    private MockHttpServletResponse send(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request).andReturn().getResponse();
    }
}
