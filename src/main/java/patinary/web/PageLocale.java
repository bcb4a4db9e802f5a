package patinary.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Collections;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataAccessException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.TransactionException;
import org.springframework.web.servlet.LocaleResolver;

/**
 * In what language a page is: the shop's once there is a shop, until then the one that the browser asks for. Where the store
 * cannot be asked, it is the language of the page before.
 */
@Component("localeResolver")
class PageLocale implements LocaleResolver {

    private final House house;
    private volatile @Nullable Locale last;

    PageLocale(House house) {
        this.house = house;
    }

    @Override
    public Locale resolveLocale(HttpServletRequest request) {
        try {
            Locale now = house.isOpen() ? house.locale() : asked(request);
            last = now;
            return now;
        } catch (DataAccessException | TransactionException unreachable) {
            return withoutStore(request);
        }
    }

    /** The same without asking the store. */
    Locale withoutStore(HttpServletRequest request) {
        Locale known = last;
        return known == null ? asked(request) : known;
    }

    private static Locale asked(HttpServletRequest request) {
        return Tongue.best(Collections.list(request.getLocales()));
    }

    /** The language is changed on the page of the settings alone. */
    @Override
    public void setLocale(HttpServletRequest request, @Nullable HttpServletResponse response, @Nullable Locale locale) {
        throw new UnsupportedOperationException("The language is a setting of the shop");
    }
}
