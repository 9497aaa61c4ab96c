import { type Message } from '../measure/message.js';
/** Somebody's own words, such as a title or the name of a piece. They are the same in every language. */
export interface OwnWordsSayings {
    ownWords: {
        text: string;
    };
}
export declare const ownWords: (text: string) => Message;
