import { sayings, type Message } from '../measure/message.js';

/** What a person wrote herself, such as a title or a piece's name: it is the same in every language. */
export interface OwnWordsSayings {
  ownWords: { text: string };
}

const say = sayings<OwnWordsSayings>();

export const ownWords = (text: string): Message => say('ownWords', { text });
