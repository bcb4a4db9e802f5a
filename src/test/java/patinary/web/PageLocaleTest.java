package patinary.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.mock.web.MockHttpServletRequest;

/** Whose language a page is in. */
class PageLocaleTest {

    private final House house = mock(House.class);
    private final MockHttpServletRequest request = new MockHttpServletRequest("GET", "/");
    private final PageLocale pages = new PageLocale(house);

    @Test
    void beforeThereIsAShopThatOfTheBrowser() {
        request.setPreferredLocales(List.of(Locale.FRENCH, Locale.forLanguageTag("es-MX")));

        assertThat(pages.resolveLocale(request).toLanguageTag()).isEqualTo("es-MX");
    }

    @Test
    void thenThatOfTheShop() {
        speaks("es-US");
        request.setPreferredLocales(List.of(Locale.UK));

        assertThat(pages.resolveLocale(request).toLanguageTag()).isEqualTo("es-US");
    }

    @Test
    void withoutTheStoreThatOfThePageBefore() {
        request.setPreferredLocales(List.of(Locale.UK));
        assertThat(pages.withoutStore(request)).isEqualTo(Locale.UK);
        speaks("es-US");
        pages.resolveLocale(request);
        when(house.isOpen()).thenThrow(new DataAccessResourceFailureException("closed"));

        assertThat(pages.resolveLocale(request).toLanguageTag()).isEqualTo("es-US");
        assertThat(pages.withoutStore(request).toLanguageTag()).isEqualTo("es-US");
    }

    private void speaks(String tag) {
        when(house.isOpen()).thenReturn(true);
        when(house.locale()).thenReturn(Locale.forLanguageTag(tag));
    }
}
