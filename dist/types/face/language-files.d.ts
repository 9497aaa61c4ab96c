/** Asks once for the words of this language, and says when they have come. A page whose words do not come stays English. */
export declare const askFor: (lang: string, ready: () => void) => void;
