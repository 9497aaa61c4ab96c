import type { Message } from '../measure/message.js';

/** Why there is no result: which input causes it, and a message that says what is wrong. */
export interface Issue extends Pick<Message, 'code' | 'values'> {
  /** The key of the input, or the id of a row that the reader typed over. */
  input: string;
}

/** Carries a value that nobody can have meant to the ledger. Nothing else is thrown on purpose. */
export class Refusal extends Error {
  constructor(
    readonly problem: Message,
    /** The input that causes it, if we know it. */
    readonly input = '',
  ) {
    super(problem.code);
  }
}

/** Throws a {@link Refusal}. A caller may say which input it is about. */
export const refuse = (problem: Message, input?: string): never => {
  throw new Refusal(problem, input);
};

/** Runs this. A refusal goes to `otherwise`. Any other error is thrown on. */
export const unlessRefused = <T, U>(work: () => T, otherwise: (refusal: Refusal) => U): T | U => {
  try {
    return work();
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    return otherwise(refusal);
  }
};
