import { expect } from 'vitest';
import { exact } from '../../src/measure/exact.js';
import type { Answer, Refused, Row } from '../../src/reckon.js';

type Calculator<Input, Result extends Answer, More extends unknown[]> = (
  input?: Input,
  ...more: More
) => Result | Refused;

/** A calculator whose inputs have to be good ones. */
export const answersOf =
  <Input, Result extends Answer, More extends unknown[]>(reckon: Calculator<Input, Result, More>) =>
  (input: Input, ...more: More): Result => {
    const result = reckon(input, ...more);
    if (result.errors) throw new Error(JSON.stringify(result.errors));
    return result;
  };

/** The one error that a calculator has with an input: which row it is at, and its sentence. */
export const errorsOf =
  <Input>(reckon: Calculator<Input, Answer, []>) =>
  (input: Input): [input: string, message: string] => {
    const { errors = [] } = reckon(input);
    expect(errors).toHaveLength(1);
    return [errors[0]!.input, errors[0]!.message];
  };

/** A row of the working, which has to be there. */
export const row = (result: { working: Row[] }, id: string): Row =>
  result.working.find((row) => row.id === id) ?? expect.fail(`There is no row ${id}.`);

export const inches = (text: string): number => exact(text).valueOf();
