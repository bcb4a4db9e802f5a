package patinary.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import java.sql.SQLException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.context.support.ResourceBundleMessageSource;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;
import org.thymeleaf.spring6.SpringTemplateEngine;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;
import patinary.durable.StoreCare;
import patinary.durable.StoreFailure;

/** The store fails in the ways in which both databases say it; what was typed is on the page that says so. */
class StoreTroubleTest {

    private final StoreCare care = mock(StoreCare.class);
    private final SpringTemplateEngine pages = new SpringTemplateEngine();
    private final ResourceBundleMessageSource messages = new ResourceBundleMessageSource();
    private final MockHttpServletRequest request = new MockHttpServletRequest("POST", "/receipts");
    private MockHttpServletResponse response = new MockHttpServletResponse();

    @BeforeEach
    void prepare() {
        when(care.look(any())).thenAnswer(call -> StoreFailure.of(call.getArgument(0)));
        messages.setBasename("messages/web");
        messages.setDefaultEncoding("UTF-8");
        ClassLoaderTemplateResolver templates = new ClassLoaderTemplateResolver();
        templates.setPrefix("templates/");
        templates.setSuffix(".html");
        pages.setTemplateResolver(templates);
        pages.setTemplateEngineMessageSource(messages);
        request.setContentType("application/x-www-form-urlencoded");
        request.addParameter("id", "0b5d2b3e-52d1-4c0a-8d7c-0a1f4a3b2c1d");
        request.addParameter("lines[0].title", "Tin box with a \"lid\"");
        request.addParameter("lines[0].price", "4.25");
    }

    @Test
    void aFullDiskIsSaidAndWhatWasTypedIsKept() throws Exception {
        fail(new SQLException("could not extend file", "53100"));

        assertThat(response.getStatus()).isEqualTo(503);
        assertThat(response.getHeader("Retry-After")).isEqualTo("10");
        assertThat(response.getContentAsString())
                .contains("The disk of the machine that keeps the shop is full")
                .contains("action=\"/receipts\"")
                .contains("name=\"lines[0].title\" value=\"Tin box with a &quot;lid&quot;\"")
                .contains("<li>4.25</li>")
                .contains("Send it again");
    }

    @Test
    void aStoreThatIsGoneOrBusyIsSaidToo() throws Exception {
        fail(new SQLException("closed", "90098", 90098));
        assertThat(response.getContentAsString()).contains("cannot be reached", "name=\"lines[0].price\"");

        response = new MockHttpServletResponse();
        fail(new SQLException("deadlock", "40P01"));
        assertThat(response.getContentAsString()).contains("at the same moment", "name=\"lines[0].price\"");
    }

    @Test
    void aPhoneIsToldToComeAgain() throws Exception {
        request.addHeader("Idempotency-Key", "\"0b5d2b3e-52d1-4c0a-8d7c-0a1f4a3b2c1d\"");

        fail(new SQLException("terminating connection", "57P01"));

        assertThat(response.getStatus()).isEqualTo(503);
        assertThat(response.getContentAsString()).contains("\"retry\":true", "cannot be reached");
    }

    @Test
    void aPasswordGoesOnNoPage() throws Exception {
        request.addParameter("password", "four gulls");

        fail(new SQLException("closed", "90098", 90098));

        assertThat(response.getContentAsString()).contains("Go back").doesNotContain("four gulls");
    }

    @Test
    void anythingElseIsLeftToOthers() {
        assertThatThrownBy(() -> fail(new SQLException("unique", "23505"))).isInstanceOf(ServletException.class);
    }

    private void fail(SQLException failure) throws Exception {
        FilterChain chain = (asked, answered) -> {
            throw new ServletException(new DataAccessResourceFailureException("the store", failure));
        };
        new StoreTrouble(care, pages, messages, new PageLocale(mock(House.class))).doFilter(request, response, chain);
    }
}
