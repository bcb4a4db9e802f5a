package patinary.shop;

import java.time.ZoneId;
import java.util.Locale;
import org.springframework.http.server.PathContainer;
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
    public Locale locale() {
        return shop.locale();
    }

    @Override
    public ZoneId zone() {
        return shop.zone();
    }

    @Override
    public boolean isClosed(String method, String path) {
        Visitor visitor = Visitor.now();
        return visitor != Visitor.STRANGER && !Reach.isOpen(visitor, method, PathContainer.parsePath(path));
    }

    @Override
    public boolean tellsCosts() {
        return Visitor.now() != Visitor.HELPER;
    }
}
