package patinary.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.doThrow;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.ui.ExtendedModelMap;
import org.springframework.validation.DirectFieldBindingResult;
import org.springframework.web.servlet.mvc.support.RedirectAttributesModelMap;
import patinary.ledger.Refused;
import patinary.money.ShopCurrency;

/** Settings that the books refuse. */
class RefusedSettingsTest {

    @Test
    void areShownAgainAsNotTaken() {
        Settings settings = mock(Settings.class);
        CurrentShop shop = mock(CurrentShop.class);
        when(shop.locale()).thenReturn(Locale.US);
        when(shop.currency()).thenReturn(ShopCurrency.ofCode("USD"));
        when(settings.mayBeSortedBy(any())).thenReturn(true);
        doThrow(Refused.class).when(settings).change(any(), any());
        SettingsForm form = typed();
        DirectFieldBindingResult errors = new DirectFieldBindingResult(form, "form");
        MockHttpServletResponse response = new MockHttpServletResponse();

        String view = new SettingsController(settings, shop)
                .change(form, errors, new ExtendedModelMap(), response, new RedirectAttributesModelMap());

        assertThat(view).isEqualTo("shop/settings");
        assertThat(response.getStatus()).isEqualTo(422);
        assertThat(errors.getFieldErrors())
                .singleElement()
                .matches(error -> error.getField().equals("costingMethod"));
    }

    private static SettingsForm typed() {
        SettingsForm form = new SettingsForm();
        form.shopName = "An invented shop";
        form.taxTable = "plain";
        form.hourlyRate = "18";
        form.costingMethod = "AVERAGE";
        form.timeZone = "Europe/Lisbon";
        form.language = "en";
        form.country = "PT";
        return form;
    }
}
