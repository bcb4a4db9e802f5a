/**
 * Photos of pieces and of papers: taken in, turned upright, freed of everything but the picture, kept as files outside
 * the tables, and shown. Templates of other features show them with the bean {@code pictures} and the fragments of
 * {@code photos/parts}; reports join the view {@code piece_photo}.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"jobs", "phone", "shop", "web"})
package patinary.photos;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
