package patinary.shop;

import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.Amount;
import patinary.money.ShopCurrency;

/** Reads and changes the shop's settings. */
@Service
class Settings {

    private final Shops shops;

    Settings(Shops shops) {
        this.shops = shops;
    }

    @Transactional(readOnly = true)
    public SettingsForm read() {
        Shop shop = shops.findById(Shop.ONLY).orElseThrow();
        SettingsForm form = new SettingsForm();
        form.version = shop.version;
        form.shopName = shop.name;
        form.taxTable = shop.taxTable;
        form.costingMethod = shop.costingMethod.name();
        form.timeZone = shop.timeZone;
        form.hourlyRate = ShopCurrency.ofCode(shop.currency).plain(Amount.of(shop.hourlyRateMinor));
        return form;
    }

    /** @throws OptimisticLockingFailureException where the settings changed after the form was drawn */
    @Transactional
    public void change(SettingsForm form, Amount hourlyRate) {
        Shop shop = shops.findById(Shop.ONLY).orElseThrow();
        if (shop.version != form.version) {
            throw new OptimisticLockingFailureException("The settings changed in between");
        }
        shop.name = form.shopName;
        shop.taxTable = form.taxTable;
        shop.costingMethod = CostingMethod.valueOf(form.costingMethod);
        shop.hourlyRateMinor = hourlyRate.minor();
        shop.timeZone = form.timeZone;
    }
}
