import { createRef } from 'react';

// Each of these has to be an error, or the type check fails.

// @ts-expect-error: no element has such an attribute
export const misspelt = <quilt-backing overrage="4" />;
// @ts-expect-error: a top's size follows from its blocks
export const notItsOwn = <quilt-top width="58" />;
// @ts-expect-error: there is no such unit
export const noSuchChoice = <quilt-binding units="yd" />;
// @ts-expect-error: a flag is no text
export const noFlag = <quilt-backing one-way="yes" />;
// @ts-expect-error: what is reckoned cannot be set
export const reckoned = <quilt-backing result={{}} />;
// @ts-expect-error: another element's reference
export const otherElement = <quilt-backing ref={createRef<HTMLInputElement>()} />;
// @ts-expect-error: there is no such element
export const noSuchElement = <quilt-lining />;
