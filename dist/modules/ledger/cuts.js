import { RULER_MARK } from '../trade/conventions.js';
import { choiceField } from './kinds.js';
import { lengthField } from './lengths.js';

/** What the reader's ruler marks; cut sizes fall on it. */
const markField = {
    mark: lengthField({ initial: RULER_MARK, followsReader: true, most: '1 in', more: true }),
};
/** How strips are sewn end to end. */
const joinField = choiceField(['diagonal', 'straight']);

export { joinField, markField };
