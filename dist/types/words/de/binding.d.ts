import type { BindingRow, BindingSayings, bindingFields } from '../../calculators/binding/shape.js';
import type { CommonLabel } from '../common.js';
import type { CalculatorWords } from '../vocabulary.js';
/** The binding's words in German. */
export declare const binding: CalculatorWords<typeof bindingFields, BindingRow, BindingSayings, CommonLabel>;
