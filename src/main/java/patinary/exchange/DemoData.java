package patinary.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.context.annotation.Lazy;
import org.springframework.stereotype.Component;
import patinary.photos.DrawnPhotos;
import patinary.shop.FirstOwner;

/** Fills a fresh shop with the invented one, before the first page is served. */
@Component
@Lazy(false)
@ConditionalOnProperty(DemoData.SETTING)
public class DemoData implements SmartInitializingSingleton {

    public static final String SETTING = "patinary.demo";
    public static final String OWNER = "Demo";
    public static final String PASSWORD = "an invented workroom";

    private final ShopArchive archive;
    private final DrawnPhotos drawn;
    private final FirstOwner owner;

    DemoData(ShopArchive archive, DrawnPhotos drawn, FirstOwner owner) {
        this.archive = archive;
        this.drawn = drawn;
        this.owner = owner;
    }

    @Override
    public void afterSingletonsInstantiated() {
        try {
            archive.load(new ClasspathSource("/db/demo/"), Progress.SILENT);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        drawn.hang();
        owner.make(OWNER, PASSWORD);
    }
}
