package evenhand.validation;

/** Puts the inputs of a check to the model and names what it answers. */
@FunctionalInterface
interface Evaluator {
    Computed of(Inputs inputs);
}
