/**
 * Where every cent has a place: accounts, postings, the pure costing that turns documents into postings, and {@code
 * check}. The only package that writes postings. Features hand in their documents as {@link patinary.ledger.Move}s and
 * read postings back through SQL views; this package knows none of them.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"money", "durable"})
package patinary.ledger;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
