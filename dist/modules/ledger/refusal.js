/** Carries a value that nobody can have meant to the ledger. Nothing else is thrown on purpose. */
class Refusal extends Error {
    constructor(problem, 
    /** The input that causes it, if we know it. */
    input = '') {
        super(problem.code);
        this.problem = problem;
        this.input = input;
    }
}
/** Throws a {@link Refusal}. A caller may say which input it is about. */
const refuse = (problem, input) => {
    throw new Refusal(problem, input);
};
/** Runs this. A refusal goes to `otherwise`. Any other error is thrown on. */
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
