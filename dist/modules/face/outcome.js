import { told } from '../words/told.js';

/** The result of a calculator, and the same in words. */
class Outcome {
    constructor(reckoning, fields, t) {
        this.reckoning = reckoning;
        this.t = t;
        this.result = told(reckoning, fields, t);
    }
}
/** The outcome, if it has an answer. */
const goodOf = ({ reckoning, result, t }) => reckoning.own && !result.errors ? { answer: reckoning.own, reckoning, result: result, t } : undefined;

export { Outcome, goodOf };
