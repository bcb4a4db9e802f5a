package patinary.sheets;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import patinary.measure.Sides;

/**
 * One sheet that has been cut: where the cuts may have been, and the rectangles between them. Every cut goes into the
 * corner of the smallest free rectangle that holds it, turned only where it does not fit otherwise, and the rest of that rectangle falls
 * into two by one straight cut, so that the larger of the two stays as large as it can. That is the guillotine cut of the
 * literature on packing; an estimate, since nobody writes down where she really cut.
 */
final class OpenSheet {

    private static final int SCALE = 6;

    private final List<Box> cuts = new ArrayList<>();
    private final List<Box> free = new ArrayList<>();

    private record Place(Box free, BigDecimal width, BigDecimal height, boolean turned) {}

    OpenSheet(Sides sheet) {
        free.add(new Box(BigDecimal.ZERO, BigDecimal.ZERO, sheet.width(), sheet.height()));
    }

    List<Box> cuts() {
        return List.copyOf(cuts);
    }

    /** The largest first. */
    List<Box> free() {
        return free.stream().sorted(Comparator.comparing(Box::area).reversed()).toList();
    }

    BigDecimal freeArea() {
        return free.stream().map(Box::area).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Takes the cut out where it fits; says whether it does. */
    boolean take(Sides cut) {
        Optional<Place> place = free.stream()
                .flatMap(box -> Stream.of(
                        new Place(box, cut.width(), cut.height(), false),
                        new Place(box, cut.height(), cut.width(), true)))
                .filter(candidate -> candidate.free().holds(candidate.width(), candidate.height()))
                .min(Comparator.comparing((Place candidate) -> candidate.free().area())
                        .thenComparing(Place::turned));
        place.ifPresent(this::take);
        return place.isPresent();
    }

    /** Takes an area of unknown shape: strips off the largest rectangles, at most all there is; says how much it took. */
    BigDecimal take(BigDecimal area) {
        BigDecimal missing = area;
        while (missing.signum() > 0 && !free.isEmpty()) {
            Box largest = free().get(0);
            missing = missing.subtract(strip(largest, missing.min(largest.area())));
        }
        return area.subtract(missing);
    }

    private BigDecimal strip(Box box, BigDecimal area) {
        boolean tall = box.height().compareTo(box.width()) >= 0;
        BigDecimal across = tall ? box.width() : box.height();
        BigDecimal deep = area.compareTo(box.area()) == 0
                ? tall ? box.height() : box.width()
                : area.divide(across, SCALE, RoundingMode.HALF_UP);
        free.remove(box);
        if (tall) {
            cut(new Box(box.x(), box.y(), box.width(), deep));
            leave(new Box(box.x(), box.y().add(deep), box.width(), box.height().subtract(deep)));
        } else {
            cut(new Box(box.x(), box.y(), deep, box.height()));
            leave(new Box(box.x().add(deep), box.y(), box.width().subtract(deep), box.height()));
        }
        return area;
    }

    private void take(Place place) {
        Box box = place.free();
        free.remove(box);
        cut(new Box(box.x(), box.y(), place.width(), place.height()));
        BigDecimal beside = box.width().subtract(place.width());
        BigDecimal below = box.height().subtract(place.height());
        boolean wholeBeside = beside.multiply(box.height()).compareTo(below.multiply(box.width())) >= 0;
        leave(new Box(box.x().add(place.width()), box.y(), beside, wholeBeside ? box.height() : place.height()));
        leave(new Box(box.x(), box.y().add(place.height()), wholeBeside ? place.width() : box.width(), below));
    }

    private void cut(Box box) {
        if (!box.isNothing()) {
            cuts.add(box);
        }
    }

    private void leave(Box box) {
        if (!box.isNothing()) {
            free.add(box);
        }
    }
}
