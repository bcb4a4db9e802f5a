package patinary.shop;

import java.time.ZoneId;
import org.springframework.stereotype.Component;
import patinary.money.ShopCurrency;
import patinary.web.House;

/** Tells the shell which shop it stands around. */
@Component
class ShopHouse implements House {

    private final CurrentShop shop;

    ShopHouse(CurrentShop shop) {
        this.shop = shop;
    }

    @Override
    public boolean isOpen() {
        return shop.isOpen();
    }

    @Override
    public String name() {
        return shop.name();
    }

    @Override
    public ShopCurrency currency() {
        return shop.currency();
    }

    @Override
    public ZoneId zone() {
        return shop.zone();
    }
}
