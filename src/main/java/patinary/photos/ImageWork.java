package patinary.photos;

import java.util.concurrent.Callable;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.springframework.stereotype.Component;

/** Lets only a few pictures be worked on at the same time: each may need some hundred megabytes for a moment. */
@Component
class ImageWork {

    private static final int AT_ONCE = 2;
    private static final int PATIENCE = 30;

    private final Semaphore places = new Semaphore(AT_ONCE, true);

    /** @throws RefusedPicture where the work refuses the picture, or too many wait already */
    <T> T run(Callable<T> work) throws RefusedPicture {
        try {
            if (!places.tryAcquire(PATIENCE, TimeUnit.SECONDS)) {
                throw new RefusedPicture("photos.error.busy");
            }
            try {
                return work.call();
            } finally {
                places.release();
            }
        } catch (InterruptedException ending) {
            Thread.currentThread().interrupt();
            throw new RefusedPicture("photos.error.busy");
        } catch (RefusedPicture | RuntimeException passed) {
            throw passed;
        } catch (Exception unexpected) {
            throw new IllegalStateException(unexpected);
        }
    }
}
