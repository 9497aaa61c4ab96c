import { sayings, type Message } from '../measure/message.js';

/** Somebody's own words, such as a title or the name of a piece. They are the same in every language. */
export interface OwnWordsSayings {
  ownWords: { text: string };
}

const say = sayings<OwnWordsSayings>();

export const ownWords = (text: string): Message => say('ownWords', { text });
