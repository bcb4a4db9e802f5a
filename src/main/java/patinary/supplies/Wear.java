package patinary.supplies;

/** How the price of a tool that wears becomes a cost: her own choice. */
public enum Wear {
    /** An expense on the day it is bought, or taken from the shelf. */
    AT_ONCE,
    /** Spread over the uses that she thinks it lasts. */
    BY_USE
}
