package patinary.shop;

import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import patinary.money.ShopCurrency;
import patinary.web.Tongue;

/** Judges the answers of the setup page. */
@Component
class SetupAnswers {

    private final SetupCode code;
    private final PasswordRules passwords;

    SetupAnswers(SetupCode code, PasswordRules passwords) {
        this.code = code;
        this.passwords = passwords;
    }

    void check(SetupForm form, Errors errors) {
        if (!code.accepts(form.code)) {
            errors.rejectValue("code", "shop.setup.error.code");
        }
        Answers answers = new Answers(errors);
        answers.text("ownerName", form.ownerName, Answers.NAME, "shop.error.owner-name");
        passwords
                .refuse(form.password, form.ownerName, form.shopName)
                .ifPresent(reason -> errors.rejectValue("password", reason));
        answers.text("shopName", form.shopName, Answers.SHOP_NAME, "shop.error.shop-name");
        answers.oneOf("currency", form.currency, Offered.currencies(Tongue.OF_FILES), "shop.error.currency");
        if (!errors.hasFieldErrors("currency")) {
            answers.hourlyRate(ShopCurrency.ofCode(form.currency), form.hourlyRate);
        }
        answers.oneOf("taxTable", form.taxTable, Offered.taxTables(), "shop.error.tax-table");
        answers.oneOf("costingMethod", form.costingMethod, Offered.costingMethods(), "shop.error.costing");
        answers.date("firstDay", form.firstDay, "shop.error.first-day");
        answers.language(form.language, form.country);
        answers.oneOf("timeZone", form.timeZone, Offered.timeZones(), "shop.error.time-zone");
    }
}
