/** Invents the demo shop: everything in it, names and numbers alike, comes from a fixed seed. */
@org.jspecify.annotations.NullMarked
package patinary.demo;
