import { told } from '../words/told.js';

/** What a calculator came to, and the same in words. */
class Outcome {
    constructor(reckoning, fields, t) {
        this.reckoning = reckoning;
        this.t = t;
        this.result = told(reckoning, fields, t);
    }
}
/** An outcome as one with an answer, if it has one. */
const goodOf = ({ reckoning, result, t }) => reckoning.own && !result.errors ? { answer: reckoning.own, reckoning, result: result, t } : undefined;

export { Outcome, goodOf };
