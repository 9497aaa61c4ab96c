/** A value that a person could not have meant, on its way to the ledger. Nothing else is thrown on purpose. */
class Refusal extends Error {
    constructor(problem, 
    /** The input at fault, where it is known. */
    input = '') {
        super(problem.code);
        this.problem = problem;
        this.input = input;
    }
}
/** Throws a {@link Refusal}; which input it is about may be said further up. */
const refuse = (problem, input) => {
    throw new Refusal(problem, input);
};
/** Does this; what is refused in it goes to `otherwise`, and anything else that is thrown flies on. */
const unlessRefused = (work, otherwise) => {
    try {
        return work();
    }
    catch (refusal) {
        if (!(refusal instanceof Refusal))
            throw refusal;
        return otherwise(refusal);
    }
};

export { Refusal, refuse, unlessRefused };
