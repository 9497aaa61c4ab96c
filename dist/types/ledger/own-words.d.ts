import { type Message } from '../measure/message.js';
/** What a person wrote herself, such as a title or a piece's name: it is the same in every language. */
export interface OwnWordsSayings {
    ownWords: {
        text: string;
    };
}
export declare const ownWords: (text: string) => Message;
