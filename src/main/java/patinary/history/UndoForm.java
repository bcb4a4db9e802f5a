package patinary.history;

/** Nothing is typed: the button is the whole form. */
class UndoForm {}
